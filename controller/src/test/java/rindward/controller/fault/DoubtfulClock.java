package rindward.controller.fault;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.Set;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.Tick;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.HostMachine;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.SimulatedShed;

/** A shed whose board has a clock that can be set to anything, on a machine that never says so. */
final class DoubtfulClock implements AutoCloseable {
  static final Instant NOW = Instant.parse("2027-01-12T06:00:00Z");

  private final Settings settings;
  private final Time.Stepped truth = new Time.Stepped(NOW);
  private final Daemon daemon;
  private long aheadMillis;
  private boolean wasHeating;

  /**
   * @param startsAt what the clock shows when the program starts
   */
  DoubtfulClock(Path folder, Instant startsAt) throws Exception {
    isAt(startsAt);
    settings = TrialShed.settings(folder, "");
    SimulatedShed shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), truth);
    HostMachine host =
        new HostMachine(
            Files.createDirectory(folder.resolve("root")), HostMachine.none().service(), null);
    daemon = new Daemon(settings, shed, this::shown, false, host, new RuleBasedController());
  }

  /** Sets the clock. */
  final void isAt(Instant at) {
    aheadMillis = at.toEpochMilli() - truth.now().at().toEpochMilli();
  }

  /** Lives on, with a flush a minute. */
  void live(Duration stretch) throws InterruptedException {
    wasHeating = false;
    for (long i = 1; i <= stretch.dividedBy(settings.tick()); i++) {
      truth.advance(settings.tick());
      daemon.step();
      OutputDecision heater = daemon.latest().rooms().get(0).rulings().get(OutputKind.HEATER);
      wasHeating |= heater != null && heater.on();
      if (i % 6 == 0) {
        daemon.flush();
      }
    }
  }

  /** Tells whether the first room was heated of late. */
  boolean isHeating() {
    return wasHeating;
  }

  /** Returns how many minutes of the first room are kept, each counted once. */
  long kept() {
    Set<Long> seconds = new HashSet<>();
    try (Database database = new Database(settings.store())) {
      new SampleStore(database, new SampleLog(database))
          .history(settings.rooms().get(0).name())
          .forEach(
              0,
              Long.MAX_VALUE / 2,
              run -> {
                for (int i = 0; i < run.count(); i++) {
                  seconds.add(run.startMillis() + (long) i * run.stepMillis());
                }
              });
    }
    return seconds.size() / 6;
  }

  private Tick shown() {
    Tick now = truth.now();
    return new Tick(now.at().plusMillis(aheadMillis), now.nanos());
  }

  @Override
  public void close() {
    daemon.close();
  }
}
