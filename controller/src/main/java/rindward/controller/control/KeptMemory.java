package rindward.controller.control;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import rindward.controller.estimate.RoomEstimate;

/**
 * What a room's control keeps over a restart: what it believes of the room, and what it had begun.
 * Never how its outputs stand: after a start everything is off, and every minimum time begins anew.
 * It may be lost, old, or of a shed that was rewired since; then control begins cautiously without
 * it. No bound of safety rests on it: frost, cold and the end of heat go by the probes.
 *
 * @param at when it was so, by the clock on the wall
 * @param binding what it was learned with: the room's probes, outputs and calibrations
 * @param estimate by a monotonic clock that showed 0 at that moment
 * @param heaterBase the share of heat that has kept the room, 0..1
 * @param freshDue air the room is owed, in volumes of its own
 * @param slideC middle of the temperature range that was controlled to; NaN before the first
 */
public record KeptMemory(
    Instant at,
    String binding,
    RoomEstimate estimate,
    double heaterBase,
    double freshDue,
    double slideC) {

  /** What was learned longer ago was learned in another season. */
  private static final Duration OLDEST = Duration.ofDays(60);

  private static final double MOST_DUE = 2;

  /** A file may leave out anything. */
  public KeptMemory {
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(binding, "binding");
    Objects.requireNonNull(estimate, "estimate");
  }

  /** Returns what is kept of a memory. */
  public static KeptMemory of(ControlMemory memory, String binding, Tick now) {
    return new KeptMemory(
        now.at(),
        binding,
        memory.estimate().onClock(-now.nanos()),
        memory.heater().modulation().base(),
        memory.freshDue(),
        memory.slideC());
  }

  /**
   * Returns the memory that goes on from it.
   *
   * @param now the moment of the start
   * @param isDated whether the wall clock can be believed; otherwise nobody knows how old this is
   * @param wired what the room is wired with now
   */
  public ControlMemory resumed(Tick now, boolean isDated, String wired) {
    ControlMemory fresh = ControlMemory.atStart(now.nanos());
    Duration age = Duration.between(at, now.at());
    if (!binding.equals(wired) || !hasPossibleFigures() || (isDated && age.compareTo(OLDEST) > 0)) {
      return fresh;
    }
    boolean isAgeKnown = isDated && !age.isNegative();
    return new ControlMemory(
        new OutputStates(Map.of(), now.nanos()),
        now.nanos(),
        estimate.resumed(isAgeKnown ? age.toNanos() : -1, now.nanos()),
        fresh.heater().dosing(new HeaterModulation(heaterBase, 0, false)),
        freshDue,
        isAgeKnown ? slideC : Double.NaN);
  }

  private boolean hasPossibleFigures() {
    return 0 <= heaterBase
        && heaterBase <= 1
        && 0 <= freshDue
        && freshDue <= MOST_DUE
        && (Double.isNaN(slideC) || -50 <= slideC && slideC <= 80)
        && estimate.hasPossibleFigures();
  }
}
