package rindward.controller.settings;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.HeatTrust;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.controller.room.RoomPurpose;
import rindward.controller.settings.Settings.BrokerSetting;
import rindward.controller.settings.Settings.Building;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.settings.Settings.Safety;
import rindward.controller.settings.Settings.Simulation;
import rindward.hardware.OutputKind;
import rindward.hardware.wired.Simulated;

/**
 * Reads a settings file straight into the domain's own types. Strict and total: every key is known
 * or refused, and every problem in the file is found in one reading.
 */
public final class SettingsReader {
  private static final Kind<Limits> TEMPERATURES = Kind.limits(-5_000, 45_000);
  private static final Kind<Limits> HUMIDITIES = Kind.limits(0, 100_000);

  /** A range that ends at 1 % was meant as a share of one. */
  private static final int DRIEST = 1_000;

  private static final Duration SECOND = Duration.ofSeconds(1);
  private static final Duration MINUTE = Duration.ofMinutes(1);

  /**
   * A probe that fell silent is noticed at the second tick without it, which must be within 30 s.
   */
  private static final Duration LONGEST_TICK = Duration.ofSeconds(15);

  private final TableReader top;
  private final Path file;

  private SettingsReader(TableReader top, Path file) {
    this.top = top;
    this.file = file;
  }

  /**
   * Reads a file. Nothing comes back when there was any problem.
   *
   * @param problems takes everything that is wrong, the file's absence included
   */
  public static Optional<Settings> read(Path file, Problems problems) {
    String name = file.getFileName() == null ? file.toString() : file.getFileName().toString();
    String text;
    try {
      text = Files.readString(file);
    } catch (NoSuchFileException e) {
      problems.add(new Problem(name, 1, 1, "there is no file " + file.toAbsolutePath()));
      return Optional.empty();
    } catch (CharacterCodingException e) {
      problems.add(new Problem(name, 1, 1, "the file must be text in UTF-8 but is not"));
      return Optional.empty();
    } catch (IOException e) {
      problems.add(new Problem(name, 1, 1, "the file cannot be read: " + e));
      return Optional.empty();
    }
    return read(file, name, text, problems);
  }

  /**
   * Reads a text as that of a settings file.
   *
   * @param file beside which the files that it names lie
   * @param name used in the sentences
   */
  static Optional<Settings> read(Path file, String name, String text, Problems problems) {
    Optional<Settings> settings =
        TableReader.of(name, text, problems).map(top -> new SettingsReader(top, file).settings());
    return problems.isEmpty() ? settings : Optional.empty();
  }

  private Settings settings() {
    TableReader site = section("site");
    String siteName = site.required("name", Kind.TEXT);
    ZoneId zone = zone(site);
    int altitudeM = site.optional("altitude_m", Kind.whole(-400, 4_000), 0);
    site.rejectUnknown();

    TableReader control = section("control");
    Duration tick =
        control.optional("tick", Kind.duration(SECOND, LONGEST_TICK), Duration.ofSeconds(10));
    Duration hold =
        control.optional(
            "hold",
            Kind.duration(Duration.ofSeconds(10), Duration.ofHours(1)),
            MINUTE.multipliedBy(5));
    if (hold.compareTo(tick) < 0) {
      control.refuse("hold", "it must be at least as long as control.tick");
    }
    control.rejectUnknown();

    TableReader store = section("store");
    String database = store.required("file", Kind.TEXT);
    String backups = store.optional("backups", Kind.TEXT, "");
    @Nullable Elsewhere elsewhere =
        store.find("elsewhere", Elsewhere.WRITTEN).map(at -> Elsewhere.of(at, file)).orElse(null);
    store.rejectUnknown();
    Path storeFile = file.toAbsolutePath().resolveSibling(database);

    PageSetting page = PageReader.read(section("dashboard"), file);

    Map<String, TableReader> roomTables = tables("rooms");
    if (roomTables.isEmpty()) {
      top.problem(
          "rooms", "rooms was empty but there must be at least one, for example [rooms.shed]");
    }
    OutputReader outputs = new OutputReader(roomTables, tick);
    outputs.read(tables("outputs"));
    List<ProbeSetting> probes =
        ProbeReader.read(
            tables("probes"), roomTables, room -> outputs.of(room).containsKey(OutputKind.HEATER));
    Safety safety = SafetyReader.read(top, roomTables, outputs, tick);
    List<Room> rooms = new ArrayList<>();
    roomTables.values().forEach(t -> rooms.add(room(t, probes, outputs.of(t.name()))));
    BrokerSetting broker =
        top.table("broker").map(t -> BrokerReader.read(t, file, siteName)).orElse(null);
    PartsCheck.check(top, probes, outputs.settings(), broker);
    Contradictions.refuse(top, probes, outputs.settings(), safety.heartbeat());

    Calls calls = CallsReader.read(top, file);

    Simulation simulation = top.table("simulation").map(this::simulation).orElse(Simulation.USUAL);
    CropGuide builtIn = CropGuideReader.builtIn();
    CropGuide crops =
        top.table("crops").map(own -> CropGuideReader.withOwn(builtIn, own)).orElse(builtIn);
    List<PlannedLot> season =
        tables("season").values().stream()
            .map(t -> PlannedLotReader.read(t, roomTables.keySet(), crops))
            .flatMap(Optional::stream)
            .toList();
    top.rejectUnknown();
    return new Settings(
        siteName,
        zone,
        altitudeM,
        tick,
        hold,
        storeFile,
        backups.isEmpty()
            ? storeFile.resolveSibling("backups")
            : file.toAbsolutePath().resolveSibling(backups),
        elsewhere,
        page,
        rooms,
        probes,
        outputs.settings(),
        broker,
        calls,
        safety,
        simulation,
        season,
        crops);
  }

  private Simulation simulation(TableReader table) {
    Simulation simulation =
        new Simulation(
            table.optional("building", Kind.choice(Building.class), Building.STANDARD),
            table.optional("seed", Kind.whole(0, Integer.MAX_VALUE), Simulation.USUAL.seed()));
    table.rejectUnknown();
    return simulation;
  }

  private ZoneId zone(TableReader site) {
    String name = site.required("time_zone", Kind.TEXT);
    try {
      return ZoneId.of(name);
    } catch (DateTimeException e) {
      site.refuse("time_zone", "it must be a time zone such as \"America/Chicago\"");
      return ZoneId.of("UTC");
    }
  }

  private Room room(TableReader table, List<ProbeSetting> probes, Map<OutputKind, Output> outputs) {
    RoomPurpose purpose = table.required("purpose", Kind.choice(RoomPurpose.class));
    Range range =
        new Range(
            table.required("temperature", TEMPERATURES), table.required("humidity", HUMIDITIES));
    if (table.has("humidity") && range.humidity().high() <= DRIEST) {
      table.refuse(
          "humidity",
          "it must be in percent, and no air in a shed is as dry as that; write [50, 70] for a"
              + " share of 0.5 to 0.7");
    }
    List<ProbeSetting> own = probes.stream().filter(p -> p.room().equals(table.name())).toList();
    if (own.isEmpty()) {
      table.problem(
          "purpose",
          "rooms."
              + table.name()
              + " has no probe but needs at least one, for example"
              + " [probes."
              + TableReader.asKey(table.name() + "-air")
              + "] with room = \""
              + table.name()
              + "\"");
    }
    Accuracy accuracy =
        new Accuracy(
            own.stream().mapToInt(p -> p.accuracy().temperatureMilliC()).max().orElse(0),
            own.stream().mapToInt(p -> p.accuracy().humidityMilliPct()).max().orElse(0));
    boolean isSimulated = own.stream().allMatch(p -> p.driver() instanceof Simulated);
    int volume = table.optional("volume_m3", Kind.thousandths(1_000, 2_000_000), 0);
    int slide = table.optional("cools_down_a_day", Kind.thousandths(500, 50_000), 0);
    HeatTrust trust =
        new HeatTrust(
            table.optional("heater_needs_fan", Kind.FLAG, true),
            table.optional("heats_blind_in_frost", Kind.FLAG, false));
    Contradictions.refuseHeat(table, trust.needsFan(), own, outputs);
    table.rejectUnknown();
    return new Room(
        table.name(), purpose, range, outputs, accuracy, volume, slide, !isSimulated, trust);
  }

  private TableReader section(String name) {
    return top.table(name)
        .orElseGet(
            () -> {
              top.missing(name, "it must be a table [" + name + "]");
              return TableReader.of(file.toString(), "", new Problems()).orElseThrow();
            });
  }

  private Map<String, TableReader> tables(String name) {
    return top.table(name).map(TableReader::tables).orElse(Map.of());
  }
}
