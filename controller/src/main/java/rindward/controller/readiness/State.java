package rindward.controller.readiness;

/** What to do with a lot, in one word. */
public enum State {
  /** Something found in one of its fruits makes people ill. */
  STOPPED("do not eat"),
  /** No sound fruit is left. */
  NOTHING_LEFT("nothing left"),
  /** Picked unripe, and no waiting will mend it. */
  UNLIKELY_EVER_GOOD("unlikely ever good"),
  /** Hurt by cold, though it may look sound. */
  INJURED("eat now, hurt by cold"),
  /** Its time is over, and there is evidence for it. */
  PAST("past"),
  /** Nobody can tell without cutting one. */
  CHECK_ONE("check one"),
  CURING("curing"),
  /** It needs a cure, and the air where it is cures nothing. */
  NOT_CURING("not curing"),
  /** It needs a cure, and nobody measures whether it gets one. */
  CURE_NOT_KNOWN("not known"),
  /** Cured, or off the vine, and its flavour still rises. */
  RESTING("resting"),
  READY("ready"),
  EAT_FIRST("eat first");

  private final String word;

  State(String word) {
    this.word = word;
  }

  /** Returns the words used in commands and sentences. */
  @Override
  public String toString() {
    return word;
  }
}
