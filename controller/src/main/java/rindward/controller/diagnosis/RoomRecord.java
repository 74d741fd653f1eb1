package rindward.controller.diagnosis;

import java.util.ArrayList;
import java.util.List;

/** The last three days of a room, minute by minute; the oldest minutes fall out at the back. */
final class RoomRecord {
  static final int DAY_MINUTES = 1440;
  private static final int MOST = 3 * DAY_MINUTES;

  private final List<RoomSample> samples = new ArrayList<>();
  private int oldest;

  void add(RoomSample sample) {
    if (samples.size() < MOST) {
      samples.add(sample);
    } else {
      samples.set(oldest, sample);
      oldest = (oldest + 1) % MOST;
    }
  }

  int size() {
    return samples.size();
  }

  /** Returns one minute, counted from the oldest. */
  RoomSample get(int index) {
    return samples.get((oldest + index) % samples.size());
  }

  /** Tells whether the step that follows {@code n} can be judged from what led to it. */
  boolean isPlain(int n) {
    for (int i = n - 2; i <= n + 1; i++) {
      if (!get(i).isPlain()) {
        return false;
      }
    }
    return true;
  }

  /** Returns the share of the newest minutes in which the heater was on. */
  double dutyOfLast(int minutes) {
    int count = Math.min(minutes, size());
    double sum = 0;
    for (int i = size() - count; i < size(); i++) {
      sum += get(i).duty();
    }
    return sum / count;
  }
}
