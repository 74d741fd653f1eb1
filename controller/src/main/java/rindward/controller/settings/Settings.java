package rindward.controller.settings;

import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.CropGuide;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Output;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;
import rindward.hardware.wired.GpioDriver;
import rindward.hardware.wired.Offset;
import rindward.hardware.wired.ProbeDriver;
import rindward.hardware.wired.RelayDriver;
import rindward.hardware.wired.Simulated;

/**
 * One settings file, understood.
 *
 * @param siteName what the farm calls itself
 * @param zone whose days and months are meant
 * @param altitudeM height above the sea, metres
 * @param tick how often the rooms are looked at
 * @param hold how long a sample counts at most
 * @param store the database file, absolute
 * @param backups the folder of its copies, absolute
 * @param elsewhere where copies lie besides; null for nowhere
 * @param page where the page listens, how it is called and who may read
 * @param rooms in the order of the file
 * @param probes in the order of the file
 * @param outputs in the order of the file
 * @param broker how to reach the broker; null where no part speaks MQTT
 * @param calls how the shed calls for help
 * @param safety what acts when this program hangs
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
    Path backups,
    @Nullable Elsewhere elsewhere,
    PageSetting page,
    List<Room> rooms,
    List<ProbeSetting> probes,
    List<OutputSetting> outputs,
    @Nullable BrokerSetting broker,
    Calls calls,
    Safety safety,
    Simulation simulation,
    List<PlannedLot> season,
    CropGuide crops) {

  public Settings {
    rooms = List.copyOf(rooms);
    probes = List.copyOf(probes);
    outputs = List.copyOf(outputs);
    season = List.copyOf(season);
  }

  /** Tells whether the shed is simulated; a file never mixes simulated and real parts. */
  public boolean isSimulated() {
    return probes.stream().allMatch(p -> p.driver() instanceof Simulated)
        && outputs.stream().allMatch(o -> o.driver() instanceof Simulated);
  }

  /** Returns the same shed with nothing real in it, to try things on. */
  public Settings simulated() {
    return with(
        rooms.stream().map(room -> room.observed(false)).toList(),
        probes.stream().map(ProbeSetting::simulated).toList(),
        outputs.stream().map(OutputSetting::simulated).toList());
  }

  /**
   * Returns the same shed in which a room is run once every output of it, and the heartbeat if
   * there is one, was tried, and only observed until then.
   *
   * @param isTried whether somebody stood beside that output while it ran, as it is wired now
   */
  public Settings commissioned(Predicate<OutputSetting> isTried) {
    boolean isHeartTried = safety.asOutput().stream().allMatch(isTried);
    return with(
        rooms.stream()
            .map(
                room ->
                    room.observed(
                        !isHeartTried
                            || !outputs.stream()
                                .filter(o -> o.room().equals(room.name()))
                                .filter(o -> !(o.driver() instanceof Simulated))
                                .allMatch(isTried)))
            .toList(),
        probes,
        outputs);
  }

  /** Returns the same shed with every room only observed. */
  public Settings observed() {
    return with(rooms.stream().map(room -> room.observed(true)).toList(), probes, outputs);
  }

  /**
   * Returns the same shed with what comparisons have found its probes to be off by; a probe that
   * was never compared keeps what the file says.
   */
  public Settings calibrated(Function<ProbeSetting, Optional<Offset>> found) {
    return with(
        rooms,
        probes.stream().map(p -> found.apply(p).map(p::withOffset).orElse(p)).toList(),
        outputs);
  }

  /** Returns the same settings with other outputs in one room; all of them simulated. */
  public Settings withOutputs(String room, Map<OutputKind, Output> others) {
    List<Room> nextRooms =
        rooms.stream().map(r -> r.name().equals(room) ? r.withOutputs(others) : r).toList();
    List<OutputSetting> nextOutputs = new ArrayList<>();
    outputs.stream().filter(o -> !o.room().equals(room)).forEach(nextOutputs::add);
    others
        .values()
        .forEach(o -> nextOutputs.add(new OutputSetting(o.name(), room, new Simulated())));
    return with(nextRooms, probes, nextOutputs);
  }

  private Settings with(
      List<Room> otherRooms, List<ProbeSetting> otherProbes, List<OutputSetting> otherOutputs) {
    return new Settings(
        siteName,
        zone,
        altitudeM,
        tick,
        hold,
        store,
        backups,
        elsewhere,
        page,
        otherRooms,
        otherProbes,
        otherOutputs,
        broker,
        calls,
        otherOutputs.stream().allMatch(o -> o.driver() instanceof Simulated) ? Safety.NONE : safety,
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

  /**
   * One probe.
   *
   * @param room the room it hangs in; empty for one outdoors
   * @param driver what it hangs on
   * @param offset what is added to its values
   * @param accuracy how far they may still be off
   */
  public record ProbeSetting(
      String name,
      String room,
      ProbePlace place,
      ProbeDriver driver,
      Offset offset,
      Accuracy accuracy) {
    private ProbeSetting withOffset(Offset other) {
      return new ProbeSetting(name, room, place, driver, other, accuracy);
    }

    private ProbeSetting simulated() {
      return new ProbeSetting(name, room, place, new Simulated(), Offset.NONE, accuracy);
    }
  }

  /**
   * What one output hangs on; the rest its room knows.
   *
   * @param contactLife how often its contact may close, as its maker says at that load; 0 if nobody
   *     said
   */
  public record OutputSetting(String name, String room, RelayDriver driver, int contactLife) {
    /** An output of whose contact nobody has said anything. */
    public OutputSetting(String name, String room, RelayDriver driver) {
      this(name, room, driver, 0);
    }

    private OutputSetting simulated() {
      return new OutputSetting(name, room, new Simulated(), contactLife);
    }
  }

  /**
   * What acts when this program hangs or dies.
   *
   * @param watchdog the device of the board's own watchdog; null leaves it alone
   * @param heartbeat the line that each healthy tick toggles; null where there is none
   * @param highLimits those that the file declares, by the name of the room
   */
  public record Safety(
      @Nullable Path watchdog, @Nullable GpioDriver heartbeat, Map<String, HighLimit> highLimits) {
    /** Nothing does. */
    public static final Safety NONE = new Safety(null, null, Map.of());

    public Safety {
      highLimits = Map.copyOf(highLimits);
    }

    /** The name of the heartbeat's line among the relays; no output may have it. */
    public static final String HEARTBEAT = "heartbeat";

    /** Returns the heartbeat as something that can be tried, if there is one. */
    public Optional<OutputSetting> asOutput() {
      return Optional.ofNullable(heartbeat)
          .map(line -> new OutputSetting(HEARTBEAT, "the whole shed", line));
    }
  }

  /**
   * How to reach the broker.
   *
   * @param uri {@code tcp://host:port} or {@code ssl://host:port}
   * @param user empty without
   * @param passwordFile holds the password and nothing else; null without
   * @param site the farm's word in topics of our own
   * @param authority certificate of whoever vouches for the broker's; null for the usual roots
   */
  public record BrokerSetting(
      String uri,
      String user,
      @Nullable Path passwordFile,
      String site,
      @Nullable Path authority) {}
}
