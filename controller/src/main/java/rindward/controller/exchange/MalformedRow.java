package rindward.controller.exchange;

/** One row that cannot be used, and why; the reader counts it and goes on. */
final class MalformedRow extends Exception {
  private static final long serialVersionUID = 1L;

  MalformedRow(String sentence) {
    super(sentence, null, false, false);
  }
}
