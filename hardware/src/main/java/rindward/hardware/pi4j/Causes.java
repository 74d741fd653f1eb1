package rindward.hardware.pi4j;

/** Pi4J wraps what happened several times over; the innermost cause says it. */
final class Causes {
  private Causes() {}

  static String sentence(Throwable thrown) {
    Throwable inner = thrown;
    while (inner.getCause() != null) {
      inner = inner.getCause();
    }
    String message = inner.getMessage();
    return message == null ? inner.getClass().getSimpleName() : message;
  }
}
