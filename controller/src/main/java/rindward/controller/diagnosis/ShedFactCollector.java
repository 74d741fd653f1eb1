package rindward.controller.diagnosis;

import java.time.Month;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.alarm.RoomFacts;
import rindward.controller.alarm.ShedFacts;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.Tick;
import rindward.controller.room.Output;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;
import rindward.hardware.air.StandardAtmosphere;

/**
 * From one tick's snapshot to the facts that alarms are judged by. Remembers what it must to see
 * what comes slowly. A tick of two rooms costs some microseconds, and once a minute and a day a
 * little more. For the control thread.
 */
public final class ShedFactCollector {
  /** Months in which an unknown outside is taken to be cold; north of the tropics. */
  private static final Set<Month> COLD_HALF =
      EnumSet.of(
          Month.OCTOBER,
          Month.NOVEMBER,
          Month.DECEMBER,
          Month.JANUARY,
          Month.FEBRUARY,
          Month.MARCH,
          Month.APRIL);

  private static final long OVERRUN_MEMORY_SECONDS = 300;

  private static final Set<AlarmKind> OF_HEATERS =
      EnumSet.of(AlarmKind.HEATER_RUNAWAY, AlarmKind.HEATER_WITHOUT_EFFECT);

  private final Map<String, RoomFactCollector> rooms = new LinkedHashMap<>();
  private final List<Neighbours> neighbours = new ArrayList<>();
  private final ProbeFactCollector outdoors;
  private final ZoneId zone;
  private long overruns;
  private long overranSeconds = Long.MIN_VALUE / 2;

  /** Two rooms by their places in the settings, and what their probes give away. */
  private record Neighbours(int first, int second, SwappedProbesDetector probes) {
    Neighbours(int first, int second) {
      this(first, second, new SwappedProbesDetector());
    }
  }

  /**
   * @param probes the names of each room's probes
   * @param outdoorProbes those that hang in no room
   * @param zone the site's, whose months tell the cold half of the year
   */
  public ShedFactCollector(
      List<Room> rooms,
      Map<String, List<String>> probes,
      List<String> outdoorProbes,
      double altitudeM,
      ZoneId zone) {
    double pressurePa = StandardAtmosphere.pressurePa(altitudeM);
    for (Room room : rooms) {
      this.rooms.put(
          room.name(),
          new RoomFactCollector(room, probes.getOrDefault(room.name(), List.of()), pressurePa));
    }
    for (int i = 0; i < rooms.size(); i++) {
      for (int j = i + 1; j < rooms.size(); j++) {
        neighbours.add(new Neighbours(i, j));
      }
    }
    this.outdoors = new ProbeFactCollector(outdoorProbes);
    this.zone = zone;
  }

  /**
   * Takes in one tick.
   *
   * @param areHeatersCut whether the relay before all heaters has opened
   * @param lots what is known of the lots
   * @param upkeep what others have found of the shed as a whole: store, disk, channels
   * @param accepted what the grower has accepted as the best that can be had
   * @param latestOf the latest of a probe
   */
  public ShedFacts look(
      ShedSnapshot snapshot,
      boolean areHeatersCut,
      LotNotes lots,
      Set<Finding> upkeep,
      Set<AlarmId> accepted,
      Function<String, ProbeReading> latestOf,
      Tick now) {
    Set<Finding> ofShed = new HashSet<>(upkeep);
    ofShed.addAll(lots.ofShed());
    outdoors.look(latestOf, false, false, now.nanos(), ofShed);
    overruns(snapshot, now, ofShed);
    boolean isBoardLost = isBoardLost(snapshot);
    if (isBoardLost) {
      ofShed.add(new Finding(AlarmKind.BOARD_LOST, ""));
    }
    boolean isColdHalf = COLD_HALF.contains(now.at().atZone(zone).getMonth());
    Set<String> puzzling = swapped(snapshot, now, ofShed);
    List<RoomFacts> facts = new ArrayList<>(snapshot.rooms().size());
    for (RoomState state : snapshot.rooms()) {
      String name = state.room().name();
      RoomFacts room =
          patrol(name)
              .look(
                  state,
                  state.isOn(OutputKind.HEATER) && !areHeatersCut,
                  snapshot.outdoors(),
                  isColdHalf,
                  lots,
                  acceptedIn(name, accepted),
                  latestOf,
                  now);
      if (puzzling.contains(name)) {
        room = room.without(OF_HEATERS);
      }
      facts.add(isBoardLost ? room : room.finding(relaysLost(state)));
    }
    return new ShedFacts(facts, ofShed);
  }

  /** Adds rooms whose probes were mixed up; returns those whose heaters cannot be judged now. */
  private Set<String> swapped(ShedSnapshot snapshot, Tick now, Set<Finding> findings) {
    Set<String> puzzling = new HashSet<>(0);
    for (Neighbours pair : neighbours) {
      RoomState first = snapshot.rooms().get(pair.first());
      RoomState second = snapshot.rooms().get(pair.second());
      pair.probes()
          .tick(
              now.nanos() / 1_000_000_000L,
              Thousandths.toDouble(first.picture().temperatureMilliC()),
              first.isOn(OutputKind.HEATER),
              Thousandths.toDouble(second.picture().temperatureMilliC()),
              second.isOn(OutputKind.HEATER));
      if (pair.probes().isSuspected()) {
        puzzling.add(first.room().name());
        puzzling.add(second.room().name());
      }
      if (pair.probes().isFound()) {
        String both = first.room().name() + "+" + second.room().name();
        findings.add(new Finding(AlarmKind.PROBES_SWAPPED, both));
      }
    }
    return puzzling;
  }

  private RoomFactCollector patrol(String room) {
    RoomFactCollector patrol = rooms.get(room);
    if (patrol == null) {
      throw new IllegalStateException("nobody watches room " + room);
    }
    return patrol;
  }

  private void overruns(ShedSnapshot snapshot, Tick now, Set<Finding> findings) {
    long seconds = now.nanos() / 1_000_000_000L;
    if (snapshot.overruns() > overruns) {
      overranSeconds = seconds;
    }
    overruns = snapshot.overruns();
    if (seconds - overranSeconds < OVERRUN_MEMORY_SECONDS) {
      findings.add(new Finding(AlarmKind.TICK_OVERRUN, ""));
    }
  }

  /** The board is lost when no output at all can be switched. */
  private static boolean isBoardLost(ShedSnapshot snapshot) {
    int all = 0;
    int failing = 0;
    for (RoomState state : snapshot.rooms()) {
      all += state.room().outputs().size();
      failing += state.failures().size();
    }
    return all > 1 && failing == all;
  }

  private static Set<Finding> relaysLost(RoomState state) {
    Set<Finding> lost = new HashSet<>();
    for (OutputKind kind : state.failures().keySet()) {
      Output output = state.room().outputs().get(kind);
      if (output != null) {
        lost.add(new Finding(AlarmKind.RELAY_LOST, output.name()));
      }
    }
    return lost;
  }

  private static Set<AlarmKind> acceptedIn(String room, Set<AlarmId> accepted) {
    return accepted.isEmpty()
        ? Set.of()
        : accepted.stream()
            .filter(id -> id.room().equals(room))
            .map(AlarmId::kind)
            .collect(Collectors.toSet());
  }
}
