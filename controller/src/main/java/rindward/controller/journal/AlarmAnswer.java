package rindward.controller.journal;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a person says of an alarm. */
public enum AlarmAnswer {
  /** I have seen it: no further word of this occurrence. */
  ACKNOWLEDGED,
  /** A latched one is over, and I know why. */
  RESET,
  /** No word of it until a stated time. */
  SHELVED,
  UNSHELVED,
  /** It is being repaired; no word of it until it is back. */
  OUT_OF_SERVICE,
  BACK_IN_SERVICE,
  /** It is the best that can be had here: silent until this is taken back. */
  ACCEPTED,
  NOT_ACCEPTED;

  /** Returns the word used in messages and commands. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns the answer of that word. */
  public static Optional<AlarmAnswer> of(String word) {
    return Arrays.stream(values()).filter(answer -> answer.word().equals(word)).findFirst();
  }
}
