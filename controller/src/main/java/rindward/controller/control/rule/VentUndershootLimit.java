package rindward.controller.control.rule;

import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.Situation;
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
  public void consider(Situation situation, OutputRequests wishes) {
    if (!situation.knowsAir()
        || !situation.outdoor().isKnown()
        || !wishes.of(OutputKind.EXHAUST).on()) {
      return;
    }
    double ahead =
        situation.isOn(OutputKind.EXHAUST)
            ? situation.tickSeconds()
            : Math.max(situation.tickSeconds(), situation.minimumOnSeconds(OutputKind.EXHAUST) / 2);
    double fallK =
        situation
            .memory()
            .estimate()
            .response()
            .troughK(situation.air().airC(), situation.outdoor().nowC(), ahead);
    int trough = Thousandths.of(situation.air().airC() - fallK);
    int edge = situation.target().floor() + ABOVE_EDGE;
    if (trough < edge) {
      wishes.off(
          OutputKind.EXHAUST,
          goesTooFar(situation, trough) ? Precedence.CHILLING : Precedence.DAMP,
          new Reason(ReasonCode.AIRING_WOULD_COOL_TOO_FAR, trough, edge));
    }
  }

  private static boolean goesTooFar(Situation situation, int trough) {
    Stock stock = situation.order().stock();
    int chilling = stock.mindsCold() ? stock.chillingMilliC() : USUAL_CHILLING;
    return trough < situation.target().floor() - SMALL_DIP
        || trough < chilling + situation.room().accuracy().temperatureMilliC() + ABOVE_EDGE;
  }
}
