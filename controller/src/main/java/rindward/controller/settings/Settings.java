package rindward.controller.settings;

import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rindward.controller.crop.CropGuide;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Output;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;

/**
 * One settings file, understood.
 *
 * @param siteName what the farm calls itself
 * @param zone whose days and months are meant
 * @param altitudeM height above the sea, metres
 * @param tick how often the rooms are looked at
 * @param hold how long a sample counts at most
 * @param store the database file, absolute
 * @param address what the dashboard listens on
 * @param port likewise; 0 for any free one
 * @param openReading whether everybody who reaches the dashboard may read
 * @param rooms in the order of the file
 * @param probes in the order of the file
 * @param outputs in the order of the file
 * @param simulation the shed that stands in for the real one
 * @param season the lots that a simulated season plans
 * @param crops the crop guide with the file's own types
 */
public record Settings(
    String siteName,
    ZoneId zone,
    int altitudeM,
    Duration tick,
    Duration hold,
    Path store,
    String address,
    int port,
    boolean openReading,
    List<Room> rooms,
    List<ProbeSetting> probes,
    List<OutputSetting> outputs,
    Simulation simulation,
    List<PlannedLot> season,
    CropGuide crops) {

  public Settings {
    rooms = List.copyOf(rooms);
    probes = List.copyOf(probes);
    outputs = List.copyOf(outputs);
    season = List.copyOf(season);
  }

  /** Returns the same settings with other outputs in one room; all of them simulated. */
  public Settings withOutputs(String room, Map<OutputKind, Output> others) {
    List<Room> nextRooms =
        rooms.stream().map(r -> r.name().equals(room) ? r.withOutputs(others) : r).toList();
    List<OutputSetting> nextOutputs = new ArrayList<>();
    outputs.stream().filter(o -> !o.room().equals(room)).forEach(nextOutputs::add);
    others
        .values()
        .forEach(o -> nextOutputs.add(new OutputSetting(o.name(), room, Driver.SIMULATED)));
    return new Settings(
        siteName,
        zone,
        altitudeM,
        tick,
        hold,
        store,
        address,
        port,
        openReading,
        nextRooms,
        probes,
        nextOutputs,
        simulation,
        season,
        crops);
  }

  /** How the simulated shed is built. */
  public enum Building {
    STANDARD,
    BARE_BOARDS
  }

  /**
   * The simulated shed.
   *
   * @param seed of its weather and of its probes' noise
   */
  public record Simulation(Building building, int seed) {
    /** What a file without the table means. */
    static final Simulation USUAL = new Simulation(Building.STANDARD, 1);
  }

  /** What stands at the other end of a probe or an output. */
  public enum Driver {
    SIMULATED
  }

  /**
   * One probe.
   *
   * @param room the room it hangs in; empty for one outdoors
   */
  public record ProbeSetting(
      String name, String room, ProbePlace place, Driver driver, Accuracy accuracy) {}

  /** What one output hangs on; the rest its room knows. */
  public record OutputSetting(String name, String room, Driver driver) {}
}
