package rindward.controller.tasting.design;

/** What stands on every tasting sheet, before the first cup. */
public enum Caution {
  BITTER(
      "Do not swallow squash that tastes bitter; spit it out, tick 'bitter' and stop that sample."
          + " It may hold cucurbitacins, most likely if the seed was saved or came up by itself."),
  MOULD("Throw away a fruit with mould, all of it."),
  ALLERGIES("Say now if you must not eat any of the foods served today.");

  private final String sentence;

  Caution(String sentence) {
    this.sentence = sentence;
  }

  /** Returns the caution as it is printed. */
  public String sentence() {
    return sentence;
  }
}
