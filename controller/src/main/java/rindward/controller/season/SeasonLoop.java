package rindward.controller.season;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rindward.controller.control.ControlMemory;
import rindward.controller.control.Controller;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.RoomDecision;
import rindward.controller.control.Tick;
import rindward.controller.daemon.Time;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.hardware.OutputKind;
import rindward.hardware.Probe;
import rindward.hardware.Relay;
import rindward.hardware.shed.RoomTruth;
import rindward.hardware.shed.SimulatedShed;

/**
 * Ticks without a daemon around them: probes are read, decisions taken, relays switched, time moved
 * on, and a {@link Course} told of all of it. Nothing is stored. For one thread.
 */
public final class SeasonLoop {
  private final SimulatedShed shed;
  private final Time.Stepped time;
  private final Duration tick;
  private final Controller controller;
  private final List<Watch> watches = new ArrayList<>();
  private final List<Watched> outdoors;

  /** What happens while the loop runs. */
  public interface Course {
    /** A tick begins: fruit may be carried and orders changed. */
    void dawns(Instant at);

    /** Returns what is asked of a room. */
    RoomDemand demand(Room room, Instant at);

    /**
     * A room as it is at the start of a tick.
     *
     * @param truth what it is really like
     * @param picture what its probes say
     */
    void sees(Room room, RoomDemand demand, RoomTruth truth, Picture picture, Duration tick);
  }

  /** A probe and where it hangs. */
  public record Watched(Probe probe, ProbePlace place) {}

  private static final class Watch {
    final Room room;
    final List<Watched> probes;
    final Map<OutputKind, Relay> relays = new EnumMap<>(OutputKind.class);
    ControlMemory memory;

    Watch(Room room, List<Watched> probes, ControlMemory memory) {
      this.room = room;
      this.probes = probes;
      this.memory = memory;
    }
  }

  /**
   * @param time the time the shed lives by
   * @param probes the probes of each room
   * @throws IOException when the shed lacks a relay that a room has
   */
  public SeasonLoop(
      SimulatedShed shed,
      Time.Stepped time,
      Duration tick,
      Map<Room, List<Watched>> probes,
      List<Watched> outdoors,
      Controller controller)
      throws IOException {
    this.shed = shed;
    this.time = time;
    this.tick = tick;
    this.controller = controller;
    this.outdoors = outdoors;
    for (Map.Entry<Room, List<Watched>> room : probes.entrySet()) {
      Watch watch =
          new Watch(room.getKey(), room.getValue(), ControlMemory.atStart(time.now().nanos()));
      for (Output output : room.getKey().outputs().values()) {
        watch.relays.put(output.kind(), shed.relay(output.name()));
      }
      watches.add(watch);
    }
  }

  /**
   * Lives through a stretch of time.
   *
   * @param progress told after each simulated day
   * @throws IOException when a probe or relay fails, which a simulated one does only on demand
   */
  public void run(Duration length, Course course, Runnable progress) throws IOException {
    long ticks = length.dividedBy(tick);
    long daily = Math.max(1, Duration.ofDays(1).dividedBy(tick));
    for (long i = 1; i <= ticks; i++) {
      Tick now = time.now();
      course.dawns(now.at());
      Picture outdoor = picture(outdoors, now.nanos());
      for (Watch watch : watches) {
        look(watch, course, outdoor, now);
      }
      time.advance(tick);
      if (i % daily == 0) {
        progress.run();
      }
    }
    shed.catchUp();
  }

  private void look(Watch watch, Course course, Picture outdoor, Tick now) throws IOException {
    RoomDemand demand = course.demand(watch.room, now.at());
    Picture picture = picture(watch.probes, now.nanos());
    course.sees(watch.room, demand, shed.truth(watch.room.name()), picture, tick);
    RoomDecision decision =
        controller.decide(watch.memory, watch.room, demand, picture, outdoor, now);
    for (Map.Entry<OutputKind, OutputDecision> ruling : decision.rulings().entrySet()) {
      Relay relay = watch.relays.get(ruling.getKey());
      boolean on = ruling.getValue().on();
      if (relay != null && watch.memory.switched(ruling.getKey()).on() != on) {
        relay.set(on);
      }
    }
    watch.memory = decision.memory();
  }

  private static Picture picture(List<Watched> probes, long nanos) throws IOException {
    List<ProbeReading> readings = new ArrayList<>(probes.size());
    for (Watched watched : probes) {
      readings.add(
          new ProbeReading(
              watched.probe().name(), watched.place(), watched.probe().read(), nanos, null));
    }
    return Picture.of(readings, nanos);
  }
}
