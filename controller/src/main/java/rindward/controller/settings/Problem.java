package rindward.controller.settings;

/**
 * One thing that is wrong in a file, in one sentence, at the place where a person has to look.
 *
 * @param file name of the file as the person knows it
 * @param line line, counted from 1
 * @param column column, counted from 1
 * @param sentence names the key, says what it was and what it must be
 */
public record Problem(String file, int line, int column, String sentence) {

  /** Returns {@code file:line:column: sentence}, the form that editors can jump to. */
  @Override
  public String toString() {
    return file + ":" + line + ":" + column + ": " + sentence;
  }
}
