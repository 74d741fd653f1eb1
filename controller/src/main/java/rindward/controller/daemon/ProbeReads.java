package rindward.controller.daemon;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.Thousandths;

/**
 * Reads the probes, bus by bus. Each bus has one worker and at most one round of reads outstanding,
 * so a bus that hangs costs its own probes and nothing else; their age tells the rest.
 */
final class ProbeReads {
  private final Time time;
  private final List<Bus> buses;
  private final Map<String, ProbePlace> places;
  private final Map<String, ProbeReading> latest = new LinkedHashMap<>();
  private final Map<String, Reading> doubted = new HashMap<>();

  /** Several probes that are read one after the other by one worker. */
  private record Bus(
      List<Probe> probes, Executor worker, SupervisedTask reading, AtomicBoolean isBusy) {}

  /**
   * @param places where each probe hangs
   * @param probesByBus the probes of each bus
   * @param workers gives the worker of a bus; one that runs tasks at once makes reads synchronous
   * @param tasks supervises the rounds of each bus
   */
  ProbeReads(
      Time time,
      Map<String, ProbePlace> places,
      Map<String, List<Probe>> probesByBus,
      Workers workers,
      TaskSupervisor tasks) {
    this.time = time;
    this.places = Map.copyOf(places);
    this.buses = new ArrayList<>();
    probesByBus.forEach(
        (bus, probes) ->
            buses.add(
                new Bus(
                    List.copyOf(probes),
                    workers.of(bus),
                    tasks.task("probes-" + bus, Cadence.whenAsked()),
                    new AtomicBoolean())));
  }

  /** Who does the reading. */
  @FunctionalInterface
  interface Workers {
    Executor of(String bus);
  }

  /**
   * Asks every idle bus for a round of reads and waits for them, but no longer than {@code
   * patience}.
   */
  void ask(Duration patience) throws InterruptedException {
    CountDownLatch rounds = new CountDownLatch(buses.size());
    for (Bus bus : buses) {
      if (bus.isBusy.compareAndSet(false, true)) {
        bus.worker.execute(
            () -> {
              try {
                bus.reading.run(() -> readAll(bus.probes));
              } finally {
                bus.isBusy.set(false);
                rounds.countDown();
              }
            });
      } else {
        rounds.countDown();
      }
    }
    // Whether all answered in time shows in the age of what they said.
    boolean unused = rounds.await(patience.toMillis(), TimeUnit.MILLISECONDS);
  }

  /** Returns the latest of a probe. */
  synchronized ProbeReading latest(String probe) {
    ProbeReading known = latest.get(probe);
    return known == null ? new ProbeReading(probe, place(probe), null, 0, null) : known;
  }

  /** A fault of the program in one probe costs that probe; it is told when the others are read. */
  private void readAll(List<Probe> probes) {
    Error fault = null;
    for (Probe probe : probes) {
      try {
        read(probe);
      } catch (Error e) {
        keepFailure(probe.name(), e.toString());
        fault = e;
      }
    }
    if (fault != null) {
      throw fault;
    }
  }

  private void read(Probe probe) {
    try {
      keep(probe, probe.read(), time.now().nanos() - probe.age().toNanos());
    } catch (IOException | RuntimeException e) {
      keepFailure(probe.name(), sentence(e));
    }
  }

  /** A value far from the one before is believed only when the next one is near it. */
  private synchronized void keep(Probe probe, Reading reading, long takenNanos) {
    ProbeReading before = latest(probe.name());
    Reading doubt = doubted.remove(probe.name());
    boolean isLeap = !before.isSilent(takenNanos) && before.isLeapTo(reading);
    if (isLeap && (doubt == null || before.withReading(doubt).isLeapTo(reading))) {
      doubted.put(probe.name(), reading);
      keepFailure(
          probe.name(),
          "it says "
              + Thousandths.toDouble(reading.temperatureMilliC())
              + " C, which is too far from what it said before");
      return;
    }
    latest.put(
        probe.name(),
        new ProbeReading(
            probe.name(),
            place(probe.name()),
            reading,
            takenNanos,
            reading.equals(before.reading()) ? before.sameSinceNanos() : takenNanos,
            probe.believedFor().toNanos(),
            null));
  }

  private synchronized void keepFailure(String probe, String sentence) {
    latest.put(probe, latest(probe).failed(sentence));
  }

  private ProbePlace place(String probe) {
    return places.getOrDefault(probe, ProbePlace.AIR);
  }

  private static String sentence(Exception e) {
    @Nullable String message = e.getMessage();
    return message == null ? e.getClass().getSimpleName() : message;
  }
}
