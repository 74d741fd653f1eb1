package rindward.hardware.shed;

import java.util.List;

/** Rooms stripped to the parts that an analytic solution has. */
final class TestRooms {
  /** A heat capacity so large that the temperature of the node stands still. */
  static final double FIXED = 1e15;

  static final Envelope TIGHT = new Envelope(List.of(), 0, 0);

  private TestRooms() {}

  /** Returns a room of 30 m3 with nothing but air in it. */
  static RoomPlan airOnly(double airCapacityJPerK, Envelope envelope, Equipment equipment) {
    return new RoomPlan("room", 30, 27, airCapacityJPerK, 0, 0, envelope, Timber.NONE, equipment);
  }

  /** Returns an envelope without leaks that loses so many watts per kelvin. */
  static Envelope losing(double wPerK) {
    return new Envelope(List.of(new Envelope.Surface("walls", wPerK, 1, false)), 0, 0);
  }

  /** Returns an envelope that only leaks, at this rate in calm air. */
  static Envelope leaking(double perHour) {
    return new Envelope(List.of(), perHour / 0.4, 0);
  }

  static Equipment heater(double watts) {
    return Equipment.NONE.withHeater(watts);
  }

  /** Lives through some time in equal steps. */
  static void run(
      RoomModel room, RoomInputs on, OutdoorAir outdoor, double seconds, double dtSeconds) {
    long steps = Math.round(seconds / dtSeconds);
    for (long i = 0; i < steps; i++) {
      room.step(on, outdoor, 0, dtSeconds);
    }
  }
}
