package rindward.controller.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.fault.TrialShed.CURING;
import static rindward.controller.fault.TrialShed.STORAGE;
import static rindward.controller.fault.TrialShed.said;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.control.ReasonCode;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.ShedFault.Kind;

/** Probes that are silent, wrong, or in the wrong place. */
final class ProbeFaults {
  private static final String AIR = "storage-air";
  private static final String HEATER = "storage-heater";
  private static final int UPPER_MILLI_C = 13_000;

  private ProbeFaults() {}

  static List<Fault> all() {
    return List.of(
        new Fault("probe silent", ProbeFaults::silent),
        new Fault("probe frozen cold", folder -> frozen(folder, true)),
        new Fault("probe frozen warm", folder -> frozen(folder, false)),
        new Fault("probe jumps", ProbeFaults::jumps),
        new Fault("one of three biased", ProbeFaults::oneOfThree),
        new Fault("two disagree", ProbeFaults::twoDisagree),
        new Fault("humidity stuck at 100 %", ProbeFaults::drowned),
        new Fault("impossible values", ProbeFaults::impossible),
        new Fault("probes of two rooms swapped", ProbeFaults::swapped),
        new Fault("probe in the heater's plume", ProbeFaults::plume));
  }

  private static FaultRow silent(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.untilHeating();
      ShedFault fault = trial.breaks(Kind.PROBE_SILENT, AIR, 0);
      Duration off =
          trial.until(() -> !trial.isCommanded(STORAGE, OutputKind.HEATER), Duration.ofMinutes(2));
      assertThat(off).isLessThanOrEqualTo(Duration.ofSeconds(30));
      assertThat(trial.reason(OutputKind.CIRCULATION)).startsWith("Carries the last warmth away");
      trial.live(Duration.ofMinutes(6));
      assertThat(trial.isAllOff(STORAGE)).isTrue();
      assertThat(trial.isTold("Probe storage-air last answered")).isTrue();
      assertThat(trial.reason(OutputKind.HEATER)).startsWith("No probe in this room");
      trial.mends(fault);
      trial.tick();
      assertThat(trial.room(STORAGE).picture().hasTemperature()).isTrue();
      return trial.row(
          "the only air probe is silent",
          "everything in the room goes off, the fan after 5 min, when it has carried away what the"
              + " heater still held",
          said(off) + " (bound 30 s)",
          "\"Probe storage-air last answered ... ago\"; each output: \"No probe in this room can"
              + " be trusted\"",
          "decides anew with the first reading");
    }
  }

  private static FaultRow frozen(Path folder, boolean isCold) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      if (isCold) {
        ShedFault door = ShedFault.of(Kind.DOOR_OPEN, STORAGE, 0.5);
        trial.shed.inject(door);
        trial.until(
            () -> trial.room(STORAGE).picture().temperatureMilliC() < 10_000, Duration.ofHours(1));
        trial.shed.clear(door);
      } else {
        trial.until(
            () -> trial.reason(OutputKind.HEATER).startsWith("Warm enough"), Duration.ofHours(3));
      }
      ShedFault fault = trial.breaks(Kind.PROBE_FROZEN, AIR, 0);
      Duration before = trial.on(HEATER);
      Duration off =
          trial.until(
              () -> trial.isTold("exactly the same for more than an hour"), Duration.ofHours(2));
      Duration heated = trial.on(HEATER).minus(before);
      assertThat(trial.isCommanded(STORAGE, OutputKind.HEATER)).isFalse();
      assertThat(heated).isLessThan(Duration.ofMinutes(45));
      trial.live(Duration.ofMinutes(10));
      assertThat(trial.calledAfter(AlarmKind.UNHELD_IN_COLD)).isPositive();
      assertThat(trial.calls()).hasSize(1);
      trial.mends(fault);
      trial.tick();
      assertThat(trial.told(STORAGE)).isEmpty();
      return isCold
          ? trial.row(
              "the only air probe repeats one reading, below what is wanted",
              "heats 20 min, pauses 10 min for want of effect, and so on; off for good after an"
                  + " hour",
              said(off) + ", of which " + said(heated) + " heated",
              "\"Heating pauses: in 20 min the air did not get warmer\"; then \"has said exactly"
                  + " the same for more than an hour; it is not used\"",
              "decides anew with the first reading that differs")
          : trial.row(
              "the same, within what is wanted",
              "nothing is switched by it after an hour; until then the room may get colder unseen",
              said(off),
              "as above",
              "the same; a whole-percent probe in a quiet room looks like this too, until the"
                  + " cooling air moves it");
    }
  }

  private static FaultRow jumps(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.breaks(Kind.PROBE_JUMPS, AIR, 8);
      int heeded = 0;
      int ticks = 6 * 360;
      for (int i = 0; i < ticks; i++) {
        trial.tick();
        boolean isHeeded =
            trial.room(STORAGE).picture().temperatureMilliC() > trial.airC(STORAGE) * 1000 + 4_000;
        heeded += isHeeded ? 1 : 0;
      }
      assertThat(heeded).isLessThan(ticks / 10);
      assertThat(trial.airC(STORAGE)).isBetween(9.5, 13.5);
      return trial.row(
          "one reading in five is 8 C too high",
          "a leap of more than 5 C is believed only if the next reading repeats it; the room is"
              + " kept",
          "at once; "
              + Math.round(100.0 * heeded / ticks)
              + " % of readings were heeded all the same (two wrong in a row, or wrong at first)",
          "nothing: each refused reading costs the probe one tick",
          "nothing to do");
    }
  }

  private static FaultRow oneOfThree(Path folder) throws Exception {
    String more = TrialShed.probe("storage-b") + TrialShed.probe("storage-c");
    try (TrialShed trial = TrialShed.settled(folder, more)) {
      ShedFault fault = trial.breaks(Kind.PROBE_BIASED, "storage-b", 5);
      Duration told = trial.until(() -> trial.isTold("disagree"), Duration.ofMinutes(2));
      trial.live(Duration.ofHours(6));
      double off =
          Math.abs(
              trial.room(STORAGE).picture().temperatureMilliC() / 1000.0 - trial.airC(STORAGE));
      // Probes of 60 s lag in air that a heater lifts by up to 2 K a minute.
      assertThat(off).isLessThan(2);
      trial.mends(fault);
      return trial.row(
          "one of three probes 5 C too warm",
          "works with the middle one; heats only while all three are below the upper limit",
          said(told),
          "\"Probes storage-c and storage-b disagree\" or the like, with both values",
          "the sentence goes");
    }
  }

  private static FaultRow twoDisagree(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder, TrialShed.probe("storage-b"))) {
      trial.breaks(Kind.PROBE_BIASED, "storage-b", 5);
      Duration told = trial.until(() -> trial.isTold("disagree"), Duration.ofMinutes(2));
      double coldest = 99;
      for (int i = 0; i < 6 * 360; i++) {
        trial.tick();
        boolean isTooWarm = trial.room(STORAGE).picture().warmestMilliC() > UPPER_MILLI_C;
        assertThat(
                isTooWarm
                    && trial.isCommanded(STORAGE, OutputKind.HEATER)
                    && trial.ruling(STORAGE, OutputKind.HEATER).reason().because()
                        != ReasonCode.ON_FOR_NOW)
            .isFalse();
        coldest = Math.min(coldest, trial.airC(STORAGE));
      }
      return trial.row(
          "one of two probes 5 C too warm",
          "nobody knows which: heats only while both are below the upper limit, so the room may be"
              + " too cold; it went down to "
              + Math.round(coldest * 10) / 10.0
              + " C",
          said(told),
          "\"Probes storage-air and storage-b disagree\", with both values",
          "the sentence goes; compare with a thermometer of your own");
    }
  }

  private static FaultRow drowned(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.breaks(Kind.HUMIDITY_STUCK_AT_100, AIR, 0);
      Duration told = trial.until(() -> trial.isTold("says 100 %"), Duration.ofMinutes(2));
      Duration humidified = trial.on("storage-humidifier");
      double coldest = 99;
      for (int i = 0; i < 12 * 360; i++) {
        trial.tick();
        coldest = Math.min(coldest, trial.airC(STORAGE));
      }
      assertThat(trial.on("storage-humidifier").minus(humidified))
          .isLessThan(Duration.ofMinutes(2));
      assertThat(coldest).isGreaterThan(9);
      return trial.row(
          "humidity says 100 % (wet probe)",
          "humidifies no more, airs while outside holds less water and is not too cold: the room"
              + " gets too dry; beside a second probe that says less than 90 % it is left out",
          said(told),
          "\"Probe storage-air says 100 %: it is wet, or the air drips\"",
          "goes on with the first lower value");
    }
  }

  private static FaultRow impossible(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.untilHeating();
      trial.breaks(Kind.PROBE_IMPOSSIBLE, AIR, 85);
      Duration off =
          trial.until(() -> !trial.isCommanded(STORAGE, OutputKind.HEATER), Duration.ofMinutes(2));
      assertThat(off).isLessThanOrEqualTo(Duration.ofSeconds(30));
      Duration told =
          trial.until(() -> trial.isTold("air in a shed cannot be"), Duration.ofMinutes(2));
      assertThat(told).isLessThanOrEqualTo(Duration.ofSeconds(30));
      return trial.row(
          "the only air probe reads 85 C",
          "everything in the room goes off",
          said(off) + " (bound 30 s)",
          "\"says 85.0 C ..., which air in a shed cannot be\"",
          "decides anew with the first reading that can be true");
    }
  }

  private static FaultRow swapped(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.started(folder)) {
      trial.breaks(ShedFault.swapped("curing-air", AIR));
      trial.tick();
      Duration pauses =
          trial.until(
              () ->
                  trial.ruling(CURING, OutputKind.HEATER).reason().because()
                      == ReasonCode.HEAT_WITHOUT_EFFECT,
              Duration.ofHours(2));
      Duration before = trial.on("curing-heater");
      double warmest = 0;
      for (int i = 0; i < 6 * 360; i++) {
        trial.tick();
        warmest = Math.max(warmest, trial.airC(CURING));
      }
      Duration heated = trial.on("curing-heater").minus(before);
      assertThat(heated).isLessThanOrEqualTo(Duration.ofHours(5));
      assertThat(trial.calledAfter(AlarmKind.PROBES_SWAPPED)).isLessThan(Duration.ofHours(1));
      return trial.row(
          "probes of the two rooms swapped, from the start",
          "the warm room's heater warms the wrong probe: 20 min or a little more on, 10 min"
              + " off; that room reached "
              + Math.round(warmest)
              + " C and its hardware limit is the bound",
          said(pauses),
          "\"Heating pauses: in 20 min the air did not get warmer. Look at heater and probe\"; the"
              + " commissioning checklist finds it before any crop",
          "decides anew; the alarm goes when a room's own probe answers its heater");
    }
  }

  private static FaultRow plume(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      int before = trial.shed.meter(HEATER).switchings();
      trial.live(Duration.ofHours(6));
      int usual = trial.shed.meter(HEATER).switchings() - before;
      trial.breaks(Kind.PROBE_IN_PLUME, AIR, 4);
      before = trial.shed.meter(HEATER).switchings();
      double coldest = 99;
      for (int i = 0; i < 6 * 360; i++) {
        trial.tick();
        coldest = Math.min(coldest, trial.airC(STORAGE));
      }
      int plume = trial.shed.meter(HEATER).switchings() - before;
      assertThat(coldest).isGreaterThan(5);
      return trial.row(
          "the air probe hangs in the heater's warm stream (4 C too warm while it heats)",
          "heats in short runs: "
              + plume
              + " switchings in 6 h instead of "
              + usual
              + "; the room went down to "
              + Math.round(coldest * 10) / 10.0
              + " C",
          "does not apply",
          "nothing",
          "nothing to do");
    }
  }
}
