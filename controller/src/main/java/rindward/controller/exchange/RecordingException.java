package rindward.controller.exchange;

/** A recording that cannot be read at all; the message is one sentence for the person who asked. */
public final class RecordingException extends Exception {
  private static final long serialVersionUID = 1L;

  RecordingException(String sentence) {
    super(sentence);
  }
}
