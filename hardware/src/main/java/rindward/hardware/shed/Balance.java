package rindward.hardware.shed;

/**
 * An account of heat in J, or of water in kg, over a run of one room. What came in less what went
 * out must be what is there now less what was there at the start.
 *
 * @param in everything that came in, carried-in fruit and its heat above 0 C counted
 * @param out everything that went out
 * @param stored present content less content at the start: air, inner mass, fruit; or vapour,
 *     timber and films
 * @param clamped what the model had to invent to keep a film from going below zero, or a room from
 *     more vapour than it can hold
 */
public record Balance(double in, double out, double stored, double clamped) {

  /** Returns in + clamped - out - stored, which should be zero. */
  public double error() {
    return in + clamped - out - stored;
  }

  /** Returns the error as a share of the larger of what came in and went out; 0 for no flow. */
  public double errorShare() {
    double turnover = Math.max(in, out);
    return turnover == 0 ? 0 : Math.abs(error()) / turnover;
  }
}
