package rindward.hardware.shed;

/** Sums the flows of one quantity in one room over a run. */
final class RunningBalance {
  private final double startContent;
  private double in;
  private double out;
  private double clamped;

  RunningBalance(double startContent) {
    this.startContent = startContent;
  }

  /** Books a flow; positive came in, negative went out. */
  void book(double amount) {
    if (amount >= 0) {
      in += amount;
    } else {
      out -= amount;
    }
  }

  void clamp(double amount) {
    clamped += amount;
  }

  Balance at(double content) {
    return new Balance(in, out, content - startContent, clamped);
  }
}
