package rindward.controller.journal;

import org.jspecify.annotations.Nullable;

/**
 * How one value is written down: plainly, for the journal ({@code String}, whole number, {@code
 * Boolean}, {@code List} or {@code Map} of these), and as a text, for a row and for what a page
 * says.
 *
 * @param <T> the value
 */
abstract class Form<T> {
  private final Class<?> type;
  private final String must;

  /**
   * @param type of the record's component, boxed
   * @param must what a text must be, to end the sentence "but"
   */
  Form(Class<?> type, String must) {
    this.type = type;
    this.must = must;
  }

  /** Returns the class of its values. */
  Class<?> type() {
    return type;
  }

  /** Returns what a text must be, to end the sentence "but". */
  String must() {
    return must;
  }

  /** Returns the value as it is written into the journal. */
  abstract Object plain(T value);

  /**
   * Returns the value of what was written into the journal.
   *
   * @throws IllegalArgumentException if it is none that this version knows
   */
  abstract T fromPlain(Object plain, Understanding seen);

  /** Returns the value as a text. */
  String text(T value) {
    return value.toString();
  }

  /**
   * Returns the value of a text that says something.
   *
   * @return null if it is none
   */
  abstract @Nullable T fromText(String text, FieldTexts row);

  /** Tells whether a text says anything at all. */
  boolean isSaid(String text) {
    return !text.isBlank();
  }

  /** Returns the value as it stands in a sentence. */
  Object shown(T value) {
    return value;
  }
}
