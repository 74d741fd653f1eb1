package rindward.controller.estimate;

import org.jspecify.annotations.Nullable;

/**
 * The one estimate of what a room is doing: whoever needs to know how its air, its fruit or its
 * outputs stand asks here. Immutable; a tick gives the next one.
 *
 * @param air how the room's air has moved; null before the first good picture
 * @param outdoor how it has been outdoors
 * @param response what the room has taught of its heater and its exhaust
 * @param duty how much the heater has run of late
 */
public record RoomEstimate(
    @Nullable AirEstimate air,
    OutdoorEstimate outdoor,
    IdentifiedResponse response,
    HeaterDuty duty) {

  /** Returns the estimate of a room of which nothing has been seen. */
  public static RoomEstimate unknown(long nowNanos) {
    return new RoomEstimate(
        null, OutdoorEstimate.UNKNOWN, IdentifiedResponse.NOTHING, new HeaterDuty(0, nowNanos));
  }

  /** Returns the estimate with this tick's views of the air. */
  public RoomEstimate seeing(@Nullable AirEstimate nextAir, OutdoorEstimate nextOutdoor) {
    return new RoomEstimate(nextAir, nextOutdoor, response, duty);
  }

  /** Returns the estimate with what this tick has taught. */
  public RoomEstimate taught(IdentifiedResponse nextResponse, HeaterDuty nextDuty) {
    return new RoomEstimate(air, outdoor, nextResponse, nextDuty);
  }
}
