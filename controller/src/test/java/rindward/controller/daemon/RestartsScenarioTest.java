package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.crop.Range;
import rindward.controller.journal.Harvested;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.hardware.shed.FruitLoad;
import rindward.hardware.shed.OutdoorAir;
import rindward.hardware.shed.SimulatedShed;

/**
 * A program that ends and begins again while the shed goes on: brown-outs, upgrades, somebody who
 * pulls the plug each night. Two rooms in a cold damp autumn, full of fruit that came days ago.
 */
class RestartsScenarioTest {
  private static final Instant START = Instant.parse("2026-11-08T06:00:00Z");
  private static final Instant CAME = START.minus(Duration.ofDays(6));
  private static final Duration TICK = Duration.ofSeconds(15);

  @TempDir private Path folder;
  private Time.Stepped time;
  private SimulatedShed shed;
  private Settings settings;
  private Daemon daemon;
  private int looks;
  private int inRange;
  private double wetHours;

  /** Returns how much of a day the rooms were as they should be. */
  private double inRangePct(String name, Duration between) throws Exception {
    Path own = Files.createDirectories(folder.resolve(name));
    Path file = own.resolve("shed.toml");
    Files.writeString(
        file,
        Files.readString(Path.of("examples/shed.toml"))
            .replace("tick = \"10s\"", "tick = \"15s\""));
    settings = SettingsReader.read(file, new Problems()).orElseThrow().simulated();
    time = new Time.Stepped(START);
    shed = SimulatedBoard.open(settings, RestartsScenarioTest::coldAndDamp, time);
    daemon = new Daemon(settings, shed, time, false);
    for (String room : new String[] {"curing", "storage"}) {
      var unused =
          daemon
              .door()
              .say(
                  new Harvested(room.equals("curing") ? "KC" : "KS", "kabocha", "", 80, room, CAME),
                  "Wren",
                  room + "-harvest",
                  OptionalLong.empty(),
                  START);
      shed.load(room, FruitLoad.winterSquash(room, 150, room.equals("curing") ? 24 : 12));
    }
    live(Duration.ofHours(8), Duration.ofDays(9));
    looks = 0;
    inRange = 0;
    wetHours = 0;
    live(Duration.ofHours(26), between);
    daemon.close();
    return 100.0 * inRange / looks;
  }

  private void live(Duration stretch, Duration between) throws Exception {
    long ticks = stretch.dividedBy(TICK);
    long aRestart = between.dividedBy(TICK);
    for (long i = 1; i <= ticks; i++) {
      time.advance(TICK);
      daemon.step();
      if (i % 4 == 0) {
        daemon.hear();
      }
      for (RoomState room : daemon.latest().rooms()) {
        Range range = room.range();
        looks++;
        inRange +=
            range.temperature().contains(room.picture().temperatureMilliC())
                    && range.humidity().contains(room.picture().humidityMilliPct())
                ? 1
                : 0;
        wetHours += shed.truth(room.room().name()).wetFruit() ? TICK.toSeconds() / 3600.0 : 0;
      }
      if (i % aRestart == 0) {
        daemon.close();
        time.advance(Duration.ofSeconds(20));
        daemon = new Daemon(settings, shed, time, false);
        daemon.hear();
      }
    }
  }

  @Test
  void aRestartEveryThreeHours_costsAtMostAPoint_andNoWetHour() throws Exception {
    double without = inRangePct("without", Duration.ofDays(9));
    double wetWithout = wetHours;
    double with = inRangePct("with", Duration.ofHours(3));
    assertThat(with).isGreaterThan(without - 1);
    assertThat(wetHours).isLessThanOrEqualTo(wetWithout);
  }

  /** Between -6 in the morning and 4 in the afternoon, and never drier than 85 %. */
  private static OutdoorAir coldAndDamp(long epochSeconds) {
    double hour = epochSeconds / 3600.0 % 24;
    return OutdoorAir.still(-1 - 5 * Math.cos((hour - 3) / 24 * 2 * Math.PI), 90);
  }
}
