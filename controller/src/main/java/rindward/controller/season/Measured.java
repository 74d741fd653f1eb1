package rindward.controller.season;

import java.util.Arrays;
import java.util.function.Consumer;
import rindward.controller.ledger.History;
import rindward.controller.ledger.Run;

/** What the probes of one room have said since the season began, at even spacing, in memory. */
final class Measured implements History {
  private final long startMillis;
  private final int stepMillis;
  private int[] temperaturesMilliC = new int[8_640];
  private int[] humiditiesMilliPct = new int[8_640];
  private int count;

  Measured(long startMillis, int stepMillis) {
    this.startMillis = startMillis;
    this.stepMillis = stepMillis;
  }

  void add(int temperatureMilliC, int humidityMilliPct) {
    if (count == temperaturesMilliC.length) {
      temperaturesMilliC = Arrays.copyOf(temperaturesMilliC, 2 * count);
      humiditiesMilliPct = Arrays.copyOf(humiditiesMilliPct, 2 * count);
    }
    temperaturesMilliC[count] = temperatureMilliC;
    humiditiesMilliPct[count++] = humidityMilliPct;
  }

  @Override
  public void forEach(long fromMillis, long toMillis, Consumer<Run> visit) {
    int first = clamp(ceilDiv(fromMillis - startMillis));
    int end = clamp(ceilDiv(toMillis - startMillis));
    if (first < end) {
      visit.accept(
          new Run(
              startMillis + (long) first * stepMillis,
              stepMillis,
              end - first,
              Arrays.copyOfRange(temperaturesMilliC, first, end),
              Arrays.copyOfRange(humiditiesMilliPct, first, end)));
    }
  }

  private int clamp(long index) {
    return (int) Math.max(0, Math.min(count, index));
  }

  private long ceilDiv(long millis) {
    return -Math.floorDiv(-millis, stepMillis);
  }
}
