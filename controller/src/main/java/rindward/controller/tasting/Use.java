package rindward.controller.tasting;

/** What a fruit may be good for in the kitchen; a taster ticks any number of them. */
public enum Use {
  PIE("pie"),
  CUSTARD("custard"),
  BAKING("baking"),
  SOUP("soup"),
  ROASTING("roasting"),
  SAVOURY("savoury dishes");

  private final String words;

  Use(String words) {
    this.words = words;
  }

  /** Returns the use as people say it. */
  public String words() {
    return words;
  }
}
