package rindward.controller.command.shed;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.daemon.BoardLock;
import rindward.controller.daemon.Time;
import rindward.controller.journal.ProbeCalibrated;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.hardware.wired.Offset;
import rindward.hardware.wired.WiredBoard;

/** {@code calibrate}: one probe, compared with something better, and set right from then on. */
@Command(
    name = "calibrate",
    description = {
      "Compare a probe with a thermometer, or its humidity with the air over one salt or two, and"
          + " set",
      "it right from the next start of run on. What was measured before stays as it is."
    },
    footer = {"", "Example:", "  rindward calibrate air --salts 2 --by Wren --settings board.toml"})
public final class CalibrateCommand extends ShedCommand {
  @Parameters(paramLabel = "PROBE", description = "Its name in the settings.")
  private String name = "";

  @ArgGroup(multiplicity = "1")
  private With with = new With();

  @Option(names = "--by", paramLabel = "NAME", description = "Who compares; the user if not given.")
  private String by = System.getProperty("user.name", "somebody");

  private final Attendance attendance;

  public CalibrateCommand() {
    this(Attendance.here());
  }

  public CalibrateCommand(Attendance attendance) {
    this.attendance = attendance;
  }

  /** What with. */
  static final class With {
    @Option(
        names = "--thermometer",
        paramLabel = "C",
        description = "What a thermometer that you trust says beside the probe.")
    private @Nullable BigDecimal thermometerC;

    @Option(
        names = "--salts",
        paramLabel = "1|2",
        description = "Over table salt (1), or over magnesium chloride first (2).")
    private int salts;
  }

  @Override
  protected int on(Settings settings) throws IOException {
    ProbeSetting probe =
        settings.probes().stream()
            .filter(p -> p.name().equals(name))
            .findFirst()
            .orElseThrow(() -> wrong("PROBE was '" + name + "' but there is no such probe"));
    if (with.thermometerC == null && with.salts != 1 && with.salts != 2) {
      throw wrong("--salts was '" + with.salts + "' but it must be 1 or 2");
    }
    if (settings.isSimulated()) {
      throw wrong("everything in these settings is simulated: there is nothing to compare");
    }
    try (@Nullable BoardLock ours = BoardLock.take(settings.store()).orElse(null)) {
      if (ours == null) {
        throw new IOException("The daemon reads this probe now; stop it first.");
      }
      return compare(settings, probe);
    }
  }

  private int compare(Settings settings, ProbeSetting probe) throws IOException {
    Settings plain = settings.calibrated(p -> Optional.of(Offset.NONE));
    Time time = attendance.time();
    Optional<Offset> found;
    try (WiredBoard board = attendance.boards().apply(plain).openProbes()) {
      found =
          found(new Comparison(board.probe(name), attendance.pause(), attendance.questions(out())));
    }
    if (found.isEmpty()) {
      return say("Nothing was changed.", ExitCode.NOT_WELL);
    }
    try (Database database = new Database(settings.store())) {
      EntryService door = new EntryService(new Journal(database), settings.crops());
      Offset before = TriedParts.calibration(probe, door.journal()).orElse(probe.offset());
      ProbeCalibrated entry = entry(probe, before, found.get(), time);
      Optional<String> refusal =
          door.say(entry, by, UUID.randomUUID().toString(), OptionalLong.empty(), time.now().at())
              .refusal();
      return refusal.isPresent()
          ? say("It could not be noted: " + refusal.get(), ExitCode.NOT_WELL)
          : say(sentence(entry), ExitCode.FINE);
    }
  }

  private Optional<Offset> found(Comparison comparison) throws IOException {
    BigDecimal real = with.thermometerC;
    if (real != null) {
      return comparison.withThermometer(
          real.movePointRight(3).setScale(0, RoundingMode.HALF_UP).intValue());
    }
    return with.salts == 1 ? comparison.withOneSalt() : comparison.withTwoSalts();
  }

  /** What was not compared now stays as it was found before. */
  private ProbeCalibrated entry(ProbeSetting probe, Offset before, Offset found, Time time) {
    boolean isWarmth = with.thermometerC != null;
    Offset humidity = isWarmth ? before : found;
    return new ProbeCalibrated(
        name,
        probe.driver().place(),
        (isWarmth ? found : before).temperatureMilliC(),
        humidity.humidityMilliPct(),
        humidity.humidityGainMillionths(),
        isWarmth
            ? "a thermometer at " + with.thermometerC + " C"
            : with.salts == 1 ? "table salt" : "magnesium chloride and table salt",
        time.now().at());
  }

  private static String sentence(ProbeCalibrated entry) {
    return "Probe "
        + entry.probe()
        + ": "
        + entry.temperatureMilliC() / 1000.0
        + " C is added; humidity times "
        + entry.humidityGainMillionths() / 1_000_000.0
        + ", then "
        + entry.humidityMilliPct() / 1000.0
        + " % is added; from the next start of run on.";
  }
}
