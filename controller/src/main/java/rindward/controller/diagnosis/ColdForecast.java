package rindward.controller.diagnosis;

import rindward.controller.alarm.RoomFacts;

/**
 * When a room will fall below a threshold and stay there. The heater is taken to go on as it does;
 * what has lately been lost without a known reason (a dead heater, an open door, a vent stuck open)
 * goes on being lost. Outdoors, the present temperature follows yesterday's shape.
 */
final class ColdForecast {
  /** Further ahead nothing is said. */
  static final int HORIZON_MINUTES = 180;

  private ColdForecast() {}

  /**
   * Returns in how many minutes the room will be below the threshold to stay; {@link
   * RoomFacts#NOT_FORECAST} if not within the horizon.
   *
   * @param record one-minute samples up to now
   * @param duty what the heater does from now on, 0 or 1
   * @param lostK what is lost without a known reason in each step, not positive
   */
  static int minutes(
      RoomRecord record, ThermalResponse response, double duty, double lostK, double thresholdC) {
    int now = record.size() - 1;
    double before = record.get(now - 1).roomC();
    double room = record.get(now).roomC();
    double slow = record.get(now).slowC();
    int crossed = room < thresholdC ? 0 : RoomFacts.NOT_FORECAST;
    for (int step = 1; step <= HORIZON_MINUTES; step++) {
      double next =
          room + response.change(before, room, slow, outdoorC(record, step), duty) + lostK;
      slow = RoomSample.slower(slow, room);
      before = room;
      room = next;
      if (room >= thresholdC) {
        crossed = RoomFacts.NOT_FORECAST;
      } else if (crossed == RoomFacts.NOT_FORECAST) {
        crossed = step;
      }
    }
    return crossed;
  }

  private static double outdoorC(RoomRecord record, int step) {
    int now = record.size() - 1;
    double present = record.get(now).outdoorC();
    int then = now - RoomRecord.DAY_MINUTES;
    if (then < 0) {
      return present;
    }
    double shape = record.get(then + step).outdoorC() - record.get(then).outdoorC();
    return Double.isNaN(shape) ? present : present + shape;
  }
}
