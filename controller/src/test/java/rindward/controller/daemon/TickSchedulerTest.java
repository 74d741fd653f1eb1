package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.control.Controller;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.SimulatedShed;

/** What becomes of the program when its control cannot go on. */
class TickSchedulerTest {
  @TempDir private Path folder;

  @Test
  void controlOutOfMemory_switchesEverythingOff_andTheProgramEndsSoThatItIsStartedAnew()
      throws Exception {
    Path file = folder.resolve("shed.toml");
    Files.writeString(
        file,
        Files.readString(Path.of("examples/shed.toml"))
            .replace("port = 8420", "port = 0")
            .replace("tick = \"10s\"", "tick = \"1s\""));
    Settings settings = SettingsReader.read(file, new Problems()).orElseThrow();
    Time time = Time.faster(new Time.Stepped(Instant.parse("2027-01-10T00:00:00Z")).now(), 100);
    SimulatedShed shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time);
    RuleBasedController control = new RuleBasedController();
    AtomicInteger decisions = new AtomicInteger();
    Controller outOfMemory =
        (memory, room, order, picture, outdoors, now) -> {
          if (decisions.incrementAndGet() > 200) { // By then it has heated, however slow the start.
            throw new OutOfMemoryError("a test says so");
          }
          return control.decide(memory, room, order, picture, outdoors, now);
        };
    try (Daemon daemon = new Daemon(settings, shed, time, true, HostMachine.none(), outOfMemory)) {
      daemon.start(100);

      Awaitility.await()
          .atMost(60, TimeUnit.SECONDS)
          .untilAsserted(() -> assertThat(daemon.awaitEnd()).isFalse());

      double heated = shed.meter("curing-heater").hoursOn();
      assertThat(heated).isPositive();
      Instant later = time.now().at().plusSeconds(60);
      Awaitility.await().until(() -> time.now().at().isAfter(later));
      assertThat(shed.meter("curing-heater").hoursOn()).isEqualTo(heated);
    }
  }
}
