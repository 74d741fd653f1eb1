package rindward.controller.estimate;

import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import rindward.controller.room.Picture;
import rindward.controller.room.Stock;

/**
 * The one estimate of what a room is doing: whoever needs to know how its air, its fruit or its
 * outputs stand asks here. Immutable; a tick gives the next one. It is kept over restarts.
 *
 * @param air how the room's air has moved; null before the first good picture
 * @param outdoor how it has been outdoors
 * @param response what the room has taught of its heater and its exhaust
 * @param duty how much the heater has run of late
 * @param trial how what was kept over a restart stands against what is measured now; null when
 *     nothing was, or it has stood its trial
 */
public record RoomEstimate(
    @Nullable AirEstimate air,
    OutdoorEstimate outdoor,
    IdentifiedResponse response,
    HeaterDuty duty,
    @Nullable RestartTrial trial) {

  /** What was kept in a file may lack anything. */
  public RoomEstimate {
    Objects.requireNonNull(outdoor, "outdoor");
    Objects.requireNonNull(response, "response");
    Objects.requireNonNull(duty, "duty");
  }

  /** Returns the estimate of a room of which nothing has been seen. */
  public static RoomEstimate unknown(long nowNanos) {
    return new RoomEstimate(
        null,
        OutdoorEstimate.UNKNOWN,
        IdentifiedResponse.NOTHING,
        new HeaterDuty(0, nowNanos),
        null);
  }

  /** Returns the estimate with what is seen in this tick. */
  public RoomEstimate seeing(
      Picture picture, Picture outdoors, Stock stock, Instant at, long nanos) {
    OutdoorEstimate nextOutdoor = OutdoorEstimate.next(outdoor, outdoors, nanos);
    RestartTrial nextTrial = trial == null ? null : trial.next(picture);
    if (nextTrial != null && nextTrial.isLost(nanos)) {
      return new RoomEstimate(
          AirEstimate.next(null, picture, stock, nextOutdoor, at, nanos),
          nextOutdoor,
          IdentifiedResponse.NOTHING,
          duty,
          null);
    }
    return new RoomEstimate(
        AirEstimate.next(air, picture, stock, nextOutdoor, at, nanos),
        nextOutdoor,
        response,
        duty,
        nextTrial == null || nextTrial.isOver(nanos) ? null : nextTrial);
  }

  /** Returns the estimate with what this tick has taught. */
  public RoomEstimate taught(IdentifiedResponse nextResponse, HeaterDuty nextDuty) {
    return new RoomEstimate(air, outdoor, nextResponse, nextDuty, trial);
  }

  /** Returns the same by a monotonic clock that shows so much more. */
  public RoomEstimate onClock(long shiftNanos) {
    return new RoomEstimate(
        air == null ? null : air.onClock(shiftNanos),
        outdoor.onClock(shiftNanos),
        response,
        new HeaterDuty(duty.share(), duty.sightNanos() + shiftNanos),
        null);
  }

  /**
   * Returns what goes on from an estimate that was kept: all of it, on trial, where it is known how
   * old it is; otherwise only what does not age.
   *
   * @param ageNanos how long ago it was so; negative when nobody knows
   */
  public RoomEstimate resumed(long ageNanos, long nowNanos) {
    HeaterDuty known = new HeaterDuty(duty.share(), nowNanos);
    if (ageNanos < 0 || air == null) {
      return new RoomEstimate(null, OutdoorEstimate.UNKNOWN, response, known, null);
    }
    return new RoomEstimate(
        air.onClock(nowNanos - ageNanos),
        ageNanos < OutdoorEstimate.DAY_NANOS
            ? outdoor.onClock(nowNanos - ageNanos)
            : OutdoorEstimate.UNKNOWN,
        response,
        known,
        new RestartTrial(air.slowC(), nowNanos, true));
  }

  /** Tells whether every figure is one that a room can have; a file may hold anything. */
  public boolean hasPossibleFigures() {
    return response.hasPossibleFigures()
        && 0 <= duty.share()
        && duty.share() <= 1
        && (air == null || air.hasPossibleFigures())
        && (!outdoor.isKnown() || outdoor.hasPossibleFigures());
  }
}
