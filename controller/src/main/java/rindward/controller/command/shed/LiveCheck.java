package rindward.controller.command.shed;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import rindward.controller.command.base.ExitCode;
import rindward.controller.daemon.BoardLock;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.hardware.Board;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.Thousandths;
import rindward.hardware.air.MoistAir;
import rindward.hardware.air.StandardAtmosphere;
import rindward.hardware.pi4j.ConversionPause;
import rindward.hardware.sensor.Pause;
import rindward.hardware.shed.GeneratedWeather;

/**
 * Reads every probe once and says what it says, so that a wire can be tried before anything hangs
 * on it. A probe that publishes by itself is given time to speak. Switches nothing.
 */
final class LiveCheck {
  private static final Duration PATIENCE = Duration.ofSeconds(60);
  private static final int PAUSE_MILLIS = 200;

  private final Pause pause = new ConversionPause();

  private final Settings settings;
  private final Time time;
  private final PrintWriter out;

  LiveCheck(Settings settings, Time time, PrintWriter out) {
    this.settings = settings;
    this.time = time;
    this.out = out;
  }

  /**
   * Reads and prints.
   *
   * @return the exit code: whether every probe answered
   * @throws IOException in one sentence, when the probes cannot be read now
   */
  int run() throws IOException {
    if (settings.isSimulated()) {
      int seed = settings.simulation().seed();
      try (Board shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(seed), time)) {
        return read(shed);
      }
    }
    Optional<BoardLock> lock = BoardLock.take(settings.store());
    if (lock.isEmpty()) {
      throw new IOException(
          "The daemon reads these probes now; look at its page, or stop it first.");
    }
    try (BoardLock ours = lock.get();
        Board board = RealBoard.of(settings, time).openProbes()) {
      return read(board);
    }
  }

  private int read(Board board) throws IOException {
    out.printf("%nProbes now:%n");
    out.flush();
    long end = time.now().nanos() + PATIENCE.toNanos();
    int exit = ExitCode.FINE;
    for (ProbeSetting setting : settings.probes()) {
      String said;
      try {
        said = said(patiently(setting, board.probe(setting.name()), end));
      } catch (IOException | RuntimeException e) {
        said = "no value: " + e.getMessage();
        exit = ExitCode.NOT_WELL;
      }
      out.printf("  probe  %-20s %s%n", setting.name(), said);
      out.flush();
    }
    return exit;
  }

  /** One reading and how old it is. */
  private record Aged(Reading reading, Duration age) {}

  private Aged patiently(ProbeSetting setting, Probe probe, long endNanos) throws IOException {
    while (true) {
      try {
        Reading reading = probe.read();
        return new Aged(reading, probe.age());
      } catch (IOException e) {
        if (!setting.driver().needsBroker() || time.now().nanos() > endNanos) {
          throw e;
        }
        pause.millis(PAUSE_MILLIS);
      }
    }
  }

  private String said(Aged aged) {
    Reading reading = aged.reading;
    double temperatureC = Thousandths.toDouble(reading.temperatureMilliC());
    String age = aged.age.toSeconds() == 0 ? "just now" : aged.age.toSeconds() + " s ago";
    if (!reading.hasHumidity()) {
      return String.format(Locale.ROOT, "%.2f C, %s", temperatureC, age);
    }
    double humidityPct = Thousandths.toDouble(reading.humidityMilliPct());
    double pressurePa = StandardAtmosphere.pressurePa(settings.altitudeM());
    return String.format(
        Locale.ROOT,
        "%.2f C, %.2f %%, dew point %.1f C, %s",
        temperatureC,
        humidityPct,
        new MoistAir(temperatureC, humidityPct, pressurePa).dewPointC(),
        age);
  }
}
