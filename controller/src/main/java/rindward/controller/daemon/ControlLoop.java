package rindward.controller.daemon;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.alarm.Judgement;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.ControlMemory;
import rindward.controller.control.Controller;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.Reason;
import rindward.controller.control.RoomDecision;
import rindward.controller.control.Tick;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.controller.store.StoredSwitching;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.task.SupervisedTask;
import rindward.hardware.OutputKind;

/**
 * One tick after another: read, picture, decide, switch, note, publish. Confined to the control
 * loop thread, but for {@link #latest()}. Nothing it does waits for the disk, the network or a
 * reader.
 */
public final class ControlLoop {
  private static final Logger LOG = LoggerFactory.getLogger(ControlLoop.class);

  /** Probes that have not answered by then are left behind; their age tells. */
  private static final Duration PATIENCE = Duration.ofMillis(800);

  private final Time time;
  private final Controller controller;
  private final List<Watched> rooms;
  private final List<String> outdoorProbes;
  private final DemandSource demands;
  private final ProbeReads reads;
  private final RelayDriver relays;
  private final SampleLog log;
  private final TickEvaluator judge;
  private final SupervisedTask judging;
  private final KeptMemories kept;
  private final Map<String, ControlMemory> memories = new HashMap<>();
  private final DayNotes notes = new DayNotes();
  private long ticks;
  private long overruns;
  private Judgement judgement = Judgement.NONE;
  private volatile @Nullable ShedSnapshot latest;

  /** A room and the names of its probes. */
  public record Watched(Room room, List<String> probes) {}

  ControlLoop(
      Time time,
      Controller controller,
      List<Watched> rooms,
      List<String> outdoorProbes,
      DemandSource demands,
      ProbeReads reads,
      RelayDriver relays,
      SampleLog log,
      TickEvaluator judge,
      SupervisedTask judging,
      KeptMemories kept) {
    this.time = time;
    this.controller = controller;
    this.rooms = List.copyOf(rooms);
    this.outdoorProbes = List.copyOf(outdoorProbes);
    this.demands = demands;
    this.reads = reads;
    this.relays = relays;
    this.log = log;
    this.judge = judge;
    this.judging = judging;
    this.kept = kept;
    Tick start = time.now();
    boolean isDated = !log.isWaitingForDate();
    rooms.forEach(r -> memories.put(r.room().name(), kept.begin(r.room(), start, isDated)));
  }

  /** Returns the shed after the last tick; null before the first. Any thread. */
  public @Nullable ShedSnapshot latest() {
    return latest;
  }

  /** Does one tick. Whatever goes wrong in it, everything is off afterwards and the loop lives. */
  void tick() throws InterruptedException {
    try {
      reads.ask(PATIENCE);
      Tick now = time.now();
      Picture outdoors = picture(outdoorProbes, now);
      if (!outdoorProbes.isEmpty()) {
        noteAir(SampleLog.OUTDOORS, outdoors, now);
      }
      List<RoomState> states = new ArrayList<>(rooms.size());
      for (Watched watched : rooms) {
        states.add(look(watched, outdoors, now));
      }
      kept.note(memories, now);
      ticks++;
      latest =
          judged(
              new ShedSnapshot(
                  ticks,
                  now.at(),
                  Duration.ofNanos(time.now().nanos() - now.nanos()),
                  overruns,
                  outdoors,
                  states,
                  log.health().isFine() ? "" : "The store is " + log.health().sentence()),
              now);
    } catch (RuntimeException e) {
      LOG.error("Tick {} failed; everything is switched off", ticks, e);
      relays.allOff();
      long now = time.now().nanos();
      memories.replaceAll((room, memory) -> ControlMemory.atStart(now));
    }
  }

  /** Whatever goes wrong with the alarms, the rooms are run, and the alarms stay as they stood. */
  private ShedSnapshot judged(ShedSnapshot snapshot, Tick now) {
    judging.run(() -> judgement = judge.judge(snapshot, now));
    return snapshot.judged(judgement);
  }

  /** Counts ticks that were skipped because one took too long. */
  void countOverruns(long skipped) {
    overruns += skipped;
  }

  /** Switches everything off. */
  void allOff() {
    relays.allOff();
  }

  private Picture picture(List<String> probes, Tick now) {
    List<ProbeReading> readings = new ArrayList<>(probes.size());
    for (String probe : probes) {
      readings.add(reads.latest(probe));
    }
    return Picture.of(readings, now.nanos());
  }

  private RoomState look(Watched watched, Picture outdoors, Tick now) {
    Room room = watched.room();
    Picture picture = picture(watched.probes(), now);
    ControlMemory before = memoryOf(room);
    RoomDemand demand = demands.of(room, now.at());
    RoomDecision decision = controller.decide(before, room, demand, picture, outdoors, now);
    Map<OutputKind, String> failures = relays.apply(room, decision.rulings());
    for (Output output : room.outputs().values()) {
      OutputDecision ruling = decision.rulings().get(output.kind());
      if (ruling != null && before.switched(output.kind()).on() != ruling.on()) {
        log.switching(
            new StoredSwitching(
                now.at().toEpochMilli(),
                room.name(),
                output.name(),
                ruling.on(),
                ruling.reason().sentence()));
      }
    }
    Reason beyond = decision.beyond();
    if (notes.isDue(room.name(), beyond, now.nanos()) && beyond != null) {
      log.event(now.at().toEpochMilli(), room.name(), "weather", beyond.sentence());
    }
    memories.put(room.name(), decision.memory());
    noteAir(room.name(), picture, now);
    return new RoomState(room, demand, picture, decision.rulings(), failures);
  }

  private void noteAir(String place, Picture picture, Tick now) {
    log.sample(
        place, now.at().toEpochMilli(), picture.temperatureMilliC(), picture.humidityMilliPct());
  }

  private ControlMemory memoryOf(Room room) {
    ControlMemory memory = memories.get(room.name());
    if (memory == null) {
      throw new IllegalStateException("no memory of room " + room.name());
    }
    return memory;
  }
}
