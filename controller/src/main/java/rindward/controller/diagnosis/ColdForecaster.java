package rindward.controller.diagnosis;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Optional;
import rindward.controller.alarm.RoomFacts;

/**
 * When there is something to say about cold to come. Learns the room anew each day from the last
 * three and says nothing before it has; nothing while the room is vented, or while a heater that
 * could do more still holds it.
 */
final class ColdForecaster {
  private static final int HOLD_MINUTES = 5;

  /** What is lost is judged by the middle one of so many minutes, so that one jolt is nothing. */
  private static final int SURPRISES = 15;

  private static final int LATELY_MINUTES = 10;

  /** Share of the time from which on a heater gives all it has. */
  private static final double FULLY_USED = 0.9;

  private final RoomRecord record = new RoomRecord();
  private final Deque<Double> surprises = new ArrayDeque<>();
  private Optional<ThermalResponse> response = Optional.empty();
  private int minutesSinceLearned;
  private int heldMinutes;
  private int minutes = RoomFacts.NOT_FORECAST;

  /**
   * Takes in one minute.
   *
   * @param canHeat whether there is a heater that control is free to switch on
   * @param thresholdC what the room must not fall below, or NaN
   */
  void add(RoomSample sample, boolean canHeat, double thresholdC) {
    record.add(sample);
    learn();
    int newest = record.size() - 2;
    if (newest < 2 || !record.isPlain(newest)) {
      surprises.clear();
      say(RoomFacts.NOT_FORECAST);
    } else {
      say(response.map(r -> forecast(r, canHeat, thresholdC)).orElse(RoomFacts.NOT_FORECAST));
    }
  }

  /** Returns what {@link RoomDetectors#minutesToCold()} tells. */
  int minutes() {
    return minutes;
  }

  private int forecast(ThermalResponse known, boolean canHeat, double thresholdC) {
    surprises.addLast(known.surprise(record));
    if (surprises.size() > SURPRISES) {
      surprises.removeFirst();
    }
    boolean canDoMore = canHeat && record.dutyOfLast(LATELY_MINUTES) < FULLY_USED;
    return canDoMore || surprises.size() < SURPRISES || Double.isNaN(thresholdC)
        ? RoomFacts.NOT_FORECAST
        : ColdForecast.minutes(
            record, known, canHeat ? 1 : 0, Math.min(0, middleSurprise()), thresholdC);
  }

  private void learn() {
    minutesSinceLearned++;
    boolean isTime =
        minutesSinceLearned >= RoomRecord.DAY_MINUTES
            || (response.isEmpty() && minutesSinceLearned >= RoomRecord.DAY_MINUTES / 2);
    if (isTime) {
      response = ThermalResponse.identify(record).or(() -> response);
      minutesSinceLearned = 0;
    }
  }

  private void say(int newMinutes) {
    heldMinutes = newMinutes == RoomFacts.NOT_FORECAST ? 0 : heldMinutes + 1;
    minutes = heldMinutes > HOLD_MINUTES ? newMinutes : RoomFacts.NOT_FORECAST;
  }

  private double middleSurprise() {
    double[] sorted = surprises.stream().mapToDouble(Double::doubleValue).toArray();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
