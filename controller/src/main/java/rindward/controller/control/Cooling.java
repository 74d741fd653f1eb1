package rindward.controller.control;

import rindward.hardware.OutputKind;

/**
 * Airs a room that is too warm with colder outdoor air, and in warm weather goes on at night down
 * to the lower edge, so that the day begins cool. Judged by the slow temperature, and only when
 * nothing was heated for two hours: a pulse of the heater is no reason to air.
 */
final class Cooling implements Rule {
  private static final double NO_HEAT_SECONDS = 2 * 3600;
  private static final int WORTH_AIRING = 1_500;
  private static final int BELOW_UPPER = 500;
  private static final int HYSTERESIS = 500;

  /** How far above its lower edge a room is cooled at night when a warm day is to come. */
  private static final int ABOVE_EDGE = 800;

  @Override
  public void consider(Situation situation, Wishes wishes) {
    if (!situation.knowsAir()) {
      return;
    }
    Target target = situation.target();
    int slow = Math.min(situation.slowMilliC(), situation.airMilliC());
    boolean isWarmAhead =
        situation.outdoor().isKnown()
            && Math.round(situation.outdoor().expectedWarmestC() * 1000) > target.ceiling() - 1_000;
    int start = isWarmAhead ? target.floor() + 2 * ABOVE_EDGE : target.ceiling() - BELOW_UPPER;
    int stop = isWarmAhead ? target.floor() + ABOVE_EDGE : start - HYSTERESIS;
    double heatedSeconds = (situation.now().nanos() - situation.memory().heatedNanos()) / 1e9;
    boolean isColder =
        situation.outdoor().isKnown() && situation.outdoorMilliC() < slow - WORTH_AIRING;
    boolean airs =
        isColder
            && heatedSeconds >= NO_HEAT_SECONDS
            && slow > (situation.isOn(OutputKind.EXHAUST) ? stop : start);
    if (airs) {
      wishes.on(
          OutputKind.EXHAUST,
          Right.ECONOMY,
          new Reason(
              isWarmAhead ? Because.COOLS_FOR_THE_DAY : Because.COOLS_WITH_OUTDOOR_AIR,
              slow,
              stop));
    } else {
      wishes.off(
          OutputKind.EXHAUST, Right.ECONOMY, new Reason(Because.NO_NEED_TO_AIR, slow, start));
    }
    int coolerStart = target.ceiling() - BELOW_UPPER;
    boolean cools =
        situation.slowMilliC()
            > (situation.isOn(OutputKind.COOLER) ? coolerStart - 1_000 : coolerStart);
    if (cools && heatedSeconds >= NO_HEAT_SECONDS) {
      wishes.on(OutputKind.COOLER, Right.ECONOMY, new Reason(Because.COOLS, slow, coolerStart));
    } else {
      wishes.off(
          OutputKind.COOLER, Right.ECONOMY, new Reason(Because.COOL_ENOUGH, slow, coolerStart));
    }
  }
}
