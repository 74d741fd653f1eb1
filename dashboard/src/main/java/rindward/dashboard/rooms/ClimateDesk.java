package rindward.dashboard.rooms;

import java.time.Instant;

/** What the room page asks of the controller. Called from any web thread. */
public interface ClimateDesk {

  /** Takes samples one by one; values are {@link Double#NaN} where nothing was measured. */
  @FunctionalInterface
  interface Samples {
    void sample(long atMillis, double temperatureC, double humidityPct);
  }

  /** Tells whether there is a room of that name; of others nothing is asked. */
  boolean knows(String room);

  /**
   * Returns a room's air from {@code from} up to {@code to}.
   *
   * @param slots into how many slots of equal length the stretch is divided
   * @param outdoors whether the air outdoors is returned beside it; it costs as much again
   */
  ClimateView climate(String room, Instant from, Instant to, int slots, boolean outdoors);

  /** Returns what was switched in a room, and why. */
  SwitchingView switching(String room, Instant from, Instant to, int slots);

  /** Returns what the shed called about in a room, and which lots came and went. */
  MarksView marks(String room, Instant from, Instant to);

  /** Hands over every sample of a room in time order. */
  void samples(String room, Instant from, Instant to, Samples samples);

  /** Returns the present moment by the controller's clock, at which an open stretch ends. */
  Instant now();
}
