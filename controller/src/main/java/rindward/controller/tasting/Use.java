package rindward.controller.tasting;

import java.util.Locale;

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

  /** Returns the word used in commands and files. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns the use as people say it. */
  public String words() {
    return words;
  }
}
