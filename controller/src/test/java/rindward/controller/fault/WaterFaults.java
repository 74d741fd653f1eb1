package rindward.controller.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.fault.TrialShed.STORAGE;
import static rindward.controller.fault.TrialShed.said;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rindward.controller.room.Output;
import rindward.controller.settings.Settings;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.FruitLoad;
import rindward.hardware.shed.ShedFault.Kind;

/** What gives water to the air, or takes it, and does not. */
final class WaterFaults {
  private static final String DEHUMIDIFIER = "storage-dehumidifier";

  private WaterFaults() {}

  static List<Fault> all() {
    return List.of(
        new Fault("humidifier stuck on", WaterFaults::humidifierStuck),
        new Fault("humidifier tank empty", WaterFaults::tankEmpty),
        new Fault("dehumidifier stuck on", WaterFaults::dehumidifierStuck),
        new Fault("dehumidifier tank full", WaterFaults::tankFull));
  }

  private static FaultRow humidifierStuck(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.breaks(Kind.OUTPUT_STUCK_ON, "storage-humidifier", 0);
      Duration dries =
          trial.until(
              () ->
                  trial.isCommanded(STORAGE, OutputKind.EXHAUST)
                      || trial
                          .reason(OutputKind.HEATER)
                          .startsWith("Heating to make damp air drier"),
              Duration.ofHours(12));
      double dampest = 0;
      for (int i = 0; i < 24 * 360; i++) {
        trial.tick();
        dampest = Math.max(dampest, trial.shed.truth(STORAGE).relativeHumidityPct());
      }
      return trial.row(
          "humidifier stuck on",
          "airs and warms to dry, as outside allows: the air reached "
              + Math.round(dampest)
              + " % in a day",
          said(dries),
          "the reasons of the outputs: \"Airing: it is too damp\" or \"Heating to make damp air"
              + " drier\"",
          "goes back to its range");
    }
  }

  private static FaultRow tankEmpty(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.breaks(Kind.OUTPUT_DEAD, "storage-humidifier", 0);
      Duration wants =
          trial.until(
              () -> trial.isCommanded(STORAGE, OutputKind.HUMIDIFIER), Duration.ofHours(48));
      trial.live(Duration.ofHours(6));
      assertThat(trial.isCommanded(STORAGE, OutputKind.HUMIDIFIER)).isTrue();
      assertThat(wants).isPositive();
      return trial.row(
          "humidifier dead or its tank empty",
          "humidifies on without an end; never cools to raise the humidity",
          "not seen",
          "\"Humidifying until ... %\" for hours",
          "goes back to its range");
    }
  }

  private static FaultRow dehumidifierStuck(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder, dehumidifier())) {
      trial.breaks(Kind.OUTPUT_STUCK_ON, DEHUMIDIFIER, 0);
      double driest = 100;
      for (int i = 0; i < 24 * 360; i++) {
        trial.tick();
        driest = Math.min(driest, trial.shed.truth(STORAGE).relativeHumidityPct());
      }
      assertThat(trial.airC(STORAGE)).isBetween(9.0, 15.0);
      return trial.row(
          "dehumidifier stuck on",
          "humidifies against it, and heats less: the air fell to "
              + Math.round(driest)
              + " % in a day",
          "does not apply",
          "\"Humidifying until ... %\" for hours",
          "goes back to its range");
    }
  }

  /** A room without a vent and full of fruit, so that only the dehumidifier can dry it. */
  private static FaultRow tankFull(Path folder) throws Exception {
    Settings all = TrialShed.settings(folder, dehumidifier());
    Map<OutputKind, Output> outputs = new TreeMap<>(all.rooms().get(1).outputs());
    outputs.keySet().removeAll(List.of(OutputKind.EXHAUST, OutputKind.HUMIDIFIER));
    try (TrialShed trial = TrialShed.of(all.withOutputs(STORAGE, outputs))) {
      trial.live(Duration.ofHours(12));
      trial.shed.load(STORAGE, FruitLoad.winterSquash("full", 2_000, 12));
      trial.until(() -> trial.isCommanded(STORAGE, OutputKind.DEHUMIDIFIER), Duration.ofHours(24));
      trial.breaks(Kind.OUTPUT_DEAD, DEHUMIDIFIER, 0);
      trial.live(Duration.ofHours(6));
      assertThat(trial.isCommanded(STORAGE, OutputKind.DEHUMIDIFIER)).isTrue();
      return trial.row(
          "dehumidifier dead or its tank full, in a full room without a vent",
          "dries on without an end; the air reached "
              + Math.round(trial.shed.truth(STORAGE).relativeHumidityPct())
              + " % in 6 h",
          "does not apply",
          "\"Drying\" for hours",
          "goes back to its range");
    }
  }

  private static String dehumidifier() {
    return """

    [outputs.storage-dehumidifier]
    room = "storage"
    kind = "dehumidifier"
    driver = "simulated"
    power_w = 200
    capacity = 0.3
    """;
  }
}
