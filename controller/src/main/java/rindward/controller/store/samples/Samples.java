package rindward.controller.store.samples;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rindward.controller.ledger.Run;

/**
 * Samples of one room on their way to becoming runs. They may come in any order: a board's clock
 * jumps when it finds the network. Of two samples of one second the later added counts.
 */
final class Samples {
  static final int DAY_SECONDS = 86_400;

  private long[] seconds = new long[16];
  private int[] temperatures = new int[16];
  private int[] humidities = new int[16];
  private int count;
  private boolean inOrder = true;

  /** Adds one sample; values in thousandths. */
  void add(long second, int temperatureMilliC, int humidityMilliPct) {
    if (count == seconds.length) {
      seconds = Arrays.copyOf(seconds, 2 * count);
      temperatures = Arrays.copyOf(temperatures, 2 * count);
      humidities = Arrays.copyOf(humidities, 2 * count);
    }
    inOrder &= count == 0 || seconds[count - 1] < second;
    seconds[count] = second;
    temperatures[count] = temperatureMilliC;
    humidities[count] = humidityMilliPct;
    count++;
  }

  /** Adds the samples of a run that starts at a whole second, with steps of whole seconds. */
  void add(Run run) {
    for (int i = 0; i < run.count(); i++) {
      long second = Math.floorDiv(run.startMillis() + (long) run.stepMillis() * i, 1000);
      add(second, run.temperatureMilliC()[i], run.humidityMilliPct()[i]);
    }
  }

  /** Returns everything in time order, as long runs of even spacing, each within one UTC day. */
  List<Run> runs() {
    putInOrder();
    List<Run> runs = new ArrayList<>();
    int start = 0;
    while (start < count) {
      int end = start + 1;
      long step = 1;
      if (end < count && dayOf(seconds[end]) == dayOf(seconds[start])) {
        step = seconds[end] - seconds[start];
        while (end < count
            && seconds[end] - seconds[end - 1] == step
            && dayOf(seconds[end]) == dayOf(seconds[start])) {
          end++;
        }
      }
      runs.add(
          new Run(
              1000 * seconds[start],
              Math.toIntExact(1000 * step),
              end - start,
              Arrays.copyOfRange(temperatures, start, end),
              Arrays.copyOfRange(humidities, start, end)));
      start = end;
    }
    return runs;
  }

  /** Returns the UTC day of an instant in epoch seconds, counted from 1970. */
  static long dayOf(long second) {
    return Math.floorDiv(second, DAY_SECONDS);
  }

  /** Returns the UTC day of a run within one day, counted from 1970. */
  static long dayOf(Run run) {
    return dayOf(Math.floorDiv(run.startMillis(), 1000));
  }

  private void putInOrder() {
    if (inOrder) {
      return;
    }
    int[] order =
        IntStream.range(0, count)
            .boxed()
            .sorted(Comparator.comparingLong(i -> seconds[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    Samples sorted = new Samples();
    for (int i = 0; i < order.length; i++) {
      boolean replaced = i + 1 < order.length && seconds[order[i + 1]] == seconds[order[i]];
      if (!replaced) {
        sorted.add(seconds[order[i]], temperatures[order[i]], humidities[order[i]]);
      }
    }
    seconds = sorted.seconds;
    temperatures = sorted.temperatures;
    humidities = sorted.humidities;
    count = sorted.count;
    inOrder = true;
  }
}
