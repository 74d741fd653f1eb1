package rindward.controller.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.fault.TrialShed.STORAGE;
import static rindward.controller.fault.TrialShed.said;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import rindward.hardware.shed.ShedFault.Kind;

/** The probe that hangs outdoors. */
final class OutdoorFaults {
  private OutdoorFaults() {}

  static List<Fault> all() {
    return List.of(
        new Fault("outdoor probe lost", OutdoorFaults::outdoorLost),
        new Fault("outdoor probe in the sun", OutdoorFaults::outdoorInSun));
  }

  private static FaultRow outdoorLost(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.breaks(Kind.PROBE_SILENT, "outdoor", 0);
      Duration told =
          trial.until(
              () -> !trial.daemon.latest().outdoors().troubles().isEmpty(), Duration.ofMinutes(2));
      trial.live(Duration.ofHours(6));
      assertThat(trial.airC(STORAGE)).isBetween(9.5, 13.5);
      return trial.row(
          "outdoor probe lost",
          "rooms are heated as before; nothing is aired to dry or to cool any more, only for the"
              + " day's fresh air",
          said(told),
          "\"Probe outdoor last answered ... ago\"",
          "airs again");
    }
  }

  private static FaultRow outdoorInSun(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.breaks(Kind.PROBE_IN_SUN, "outdoor", 10);
      double coldest = 99;
      for (int i = 0; i < 24 * 360; i++) {
        trial.tick();
        coldest = Math.min(coldest, trial.airC(STORAGE));
      }
      assertThat(coldest).isGreaterThan(9);
      return trial.row(
          "outdoor probe in the sun (10 C too warm)",
          "airs at wrong hours; what airing does to the room is still watched by the room's own"
              + " probes, and ends when it is too cold",
          "does not apply",
          "nothing",
          "nothing to do");
    }
  }
}
