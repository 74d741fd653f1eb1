package rindward.controller.exchange;

import java.util.Arrays;
import java.util.function.Consumer;
import rindward.controller.ledger.Run;

/**
 * Puts rows that come in time order into runs of even spacing. Of rows with equal times the last
 * counts. For one thread.
 */
final class EvenRuns {
  private static final int MOST = 4_096;

  private final Consumer<Run> visit;
  private final int[] temperatureMilliC = new int[MOST];
  private final int[] humidityMilliPct = new int[MOST];
  private long startMillis;
  private long stepMillis;
  private int count;

  EvenRuns(Consumer<Run> visit) {
    this.visit = visit;
  }

  void take(long atMillis, int temperature, int humidity) {
    long lastMillis = startMillis + stepMillis * Math.max(0, count - 1);
    long step = atMillis - lastMillis;
    if (count > 0 && step == 0) {
      temperatureMilliC[count - 1] = temperature;
      humidityMilliPct[count - 1] = humidity;
      return;
    }
    boolean goesOn =
        count == 0 || count < MOST && (count == 1 ? step <= Integer.MAX_VALUE : step == stepMillis);
    if (!goesOn) {
      finish();
    }
    if (count == 0) {
      startMillis = atMillis;
      stepMillis = 0;
    } else if (count == 1) {
      stepMillis = step;
    }
    temperatureMilliC[count] = temperature;
    humidityMilliPct[count] = humidity;
    count++;
  }

  /** Hands over what is left. */
  void finish() {
    if (count > 0) {
      int step = count == 1 ? 1 : Math.toIntExact(stepMillis);
      visit.accept(
          new Run(
              startMillis,
              step,
              count,
              Arrays.copyOf(temperatureMilliC, count),
              Arrays.copyOf(humidityMilliPct, count)));
      count = 0;
    }
  }
}
