package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.room.Stock;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * The exhaust may run only while the air it leaves behind stays above the lower edge: a minute of
 * winter air takes a small room several degrees down. How far is learned from the room itself. Dry
 * fruit is worth a small dip below the range, but not one that would chill the stock.
 */
final class VentUndershootLimit implements Rule {
  private static final int ABOVE_EDGE = 300;

  /** What dry fruit is worth, of whatever kind it is (judgement). */
  private static final int SMALL_DIP = 700;

  /** Below this no dip is allowed, whatever lies here: squash and sweet potato mind 10 C. */
  private static final int USUAL_CHILLING = 10_000;

  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    if (!input.knowsAir() || !input.outdoor().isKnown() || !requests.of(OutputKind.EXHAUST).on()) {
      return;
    }
    double ahead =
        input.isOn(OutputKind.EXHAUST)
            ? input.tickSeconds()
            : Math.max(input.tickSeconds(), input.minimumOnSeconds(OutputKind.EXHAUST) / 2);
    double fallK =
        input
            .memory()
            .estimate()
            .response()
            .troughK(input.air().airC(), input.outdoor().nowC(), ahead);
    int trough = Thousandths.of(input.air().airC() - fallK);
    int edge = input.target().floor() + ABOVE_EDGE;
    if (trough < edge) {
      requests.off(
          OutputKind.EXHAUST,
          goesTooFar(input, trough) ? Precedence.CHILLING : Precedence.DAMP,
          new Reason(ReasonCode.AIRING_WOULD_COOL_TOO_FAR, trough, edge));
    }
  }

  private static boolean goesTooFar(ControlInput input, int trough) {
    Stock stock = input.demand().stock();
    int chilling = stock.mindsCold() ? stock.chillingMilliC() : USUAL_CHILLING;
    return trough < input.target().floor() - SMALL_DIP
        || trough < chilling + input.room().accuracy().temperatureMilliC() + ABOVE_EDGE;
  }
}
