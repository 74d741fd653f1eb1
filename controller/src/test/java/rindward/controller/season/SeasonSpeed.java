package rindward.controller.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import rindward.controller.control.ControlMemory;
import rindward.controller.control.Controller;
import rindward.controller.control.RoomDecision;
import rindward.controller.control.Tick;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.daemon.SimulatedRun;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.hardware.shed.Weather;

/** How fast a season goes by with the whole daemon and its store, and what one decision costs. */
final class SeasonSpeed {
  private static final int DAYS = 180;

  private SeasonSpeed() {}

  static void print(Path example, Weather weather, BenchmarkSeason season) throws IOException {
    System.out.printf(
        Locale.ROOT,
        "%n| | |%n| --- | ---: |%n| %d days of two rooms with the store, a tick every 10 s | %.1f s"
            + " |%n| one decision for one room, the clock's own cost included | %.1f microseconds"
            + " |%n",
        DAYS,
        withStore(example, weather),
        decision(season));
  }

  private static double withStore(Path example, Weather weather) throws IOException {
    Path folder = Files.createTempDirectory("season");
    Path file = Files.copy(example, folder.resolve("shed.toml"));
    Problems problems = new Problems();
    Settings settings =
        SettingsReader.read(file, problems)
            .orElseThrow(() -> new IllegalStateException(problems.list().toString()));
    SimulatedRun rehearsal = new SimulatedRun(settings, weather, BenchmarkSeason.START);
    long began = System.nanoTime();
    try {
      rehearsal.advance(Duration.ofDays(DAYS));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
    double seconds = (System.nanoTime() - began) / 1e9;
    rehearsal.daemon().close();
    return seconds;
  }

  /** The mean over the second of two seasons, so that everything is compiled. */
  private static double decision(BenchmarkSeason season) {
    Timed timed = new Timed();
    season.run(timed, 1);
    timed.nanos = 0;
    timed.decisions = 0;
    season.run(timed, 1);
    return timed.nanos / 1e3 / timed.decisions;
  }

  private static final class Timed implements Controller {
    private final RuleBasedController control = new RuleBasedController();
    private long nanos;
    private long decisions;

    @Override
    public RoomDecision decide(
        ControlMemory memory,
        Room room,
        RoomDemand demand,
        Picture picture,
        Picture outdoors,
        Tick now) {
      long began = System.nanoTime();
      RoomDecision decision = control.decide(memory, room, demand, picture, outdoors, now);
      nanos += System.nanoTime() - began;
      decisions++;
      return decision;
    }
  }
}
