package rindward.controller.store.samples;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rindward.controller.ledger.Run;

/**
 * The newest samples as another process tells them, which writes them to the disk by and by: with
 * these a chart goes up to the last tick. What is on the disk already does no harm here. For any
 * thread.
 */
public final class RecentSamples implements HeldSamples {
  /** More than there are ticks between two flushes, of a demo sixty times faster than life too. */
  private static final int CAPACITY = 600;

  private final Map<String, Deque<Sample>> byPlace = new HashMap<>();
  private long rewrites;

  private record Sample(long second, int temperatureMilliC, int humidityMilliPct) {}

  /** Takes the newest sample of a place, kept as {@link SampleLog#sample} keeps it. */
  public synchronized void add(
      String place, long atMillis, int temperatureMilliC, int humidityMilliPct) {
    Deque<Sample> known = byPlace.computeIfAbsent(place, p -> new ArrayDeque<>());
    known.add(
        new Sample(
            Math.floorDiv(atMillis, 1000),
            ChunkCodec.asKept(temperatureMilliC),
            ChunkCodec.asKept(humidityMilliPct)));
    if (known.size() > CAPACITY) {
      known.remove();
    }
  }

  /** Takes how often a chunk on disk was replaced so far. */
  public synchronized void rewritten(long times) {
    rewrites = times;
  }

  @Override
  public synchronized List<Run> held(String room) {
    Samples samples = new Samples();
    for (Sample sample : byPlace.getOrDefault(room, new ArrayDeque<>())) {
      samples.add(sample.second, sample.temperatureMilliC, sample.humidityMilliPct);
    }
    return samples.runs();
  }

  @Override
  public synchronized long rewrites() {
    return rewrites;
  }
}
