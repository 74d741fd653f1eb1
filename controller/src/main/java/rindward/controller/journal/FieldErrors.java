package rindward.controller.journal;

import java.util.Optional;

/** The sentences with which something is refused: which field, what it was, what it must be. */
public final class FieldErrors {
  private FieldErrors() {}

  public static Optional<String> whole(String field, int value, int low, int high) {
    return low <= value && value <= high
        ? Optional.empty()
        : wrong(
            field,
            value,
            value < low ? "it must be at least " + low : "it must be at most " + high);
  }

  public static Optional<String> text(String field, String text) {
    return text(field, text, "it must not be");
  }

  public static Optional<String> text(String field, String text, String must) {
    return text.isBlank() ? Optional.of(field + " was empty but " + must) : Optional.empty();
  }

  public static Optional<String> wrong(String field, Object was, String must) {
    return Optional.of(field + " was '" + was + "' but " + must);
  }
}
