package rindward.controller.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.fault.TrialShed.STORAGE;
import static rindward.controller.fault.TrialShed.said;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.RoomFacts;
import rindward.controller.control.ReasonCode;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.ShedFault.Kind;

/** Outputs that do not do what they are told, and a door. */
final class OutputFaults {
  private static final String HEATER = "storage-heater";
  private static final long TEN_MINUTES_NANOS = 600_000_000_000L;
  private static final String EXHAUST = "storage-exhaust";

  private OutputFaults() {}

  static List<Fault> all() {
    return List.of(
        new Fault("heater relay welded on", OutputFaults::heaterWelded),
        new Fault("heater relay welded on in September", HeatFaults::weldedInSeptember),
        new Fault("the same without an outdoor probe", HeatFaults::weldedWithoutOutdoors),
        new Fault("solid-state relay shorted", HeatFaults::shorted),
        new Fault("heater element dead", folder -> heaterDead(folder, Kind.OUTPUT_DEAD)),
        new Fault("supply of the relay board lost", folder -> heaterDead(folder, Kind.SUPPLY_LOST)),
        new Fault("circulation fan dead", OutputFaults::fanDead),
        new Fault("circulation fan stuck on", OutputFaults::fanStuck),
        new Fault("exhaust stuck open", OutputFaults::exhaustOpen),
        new Fault("exhaust stuck closed", OutputFaults::exhaustClosed),
        new Fault("door left open", OutputFaults::doorOpen),
        new Fault("relay cannot be reached", OutputFaults::relayLost),
        new Fault("contact at the end of its life", OutputFaults::contactWorn),
        new Fault("heat against exhaust", OutputFaults::hunting));
  }

  private static FaultRow heaterWelded(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.untilHeating();
      ShedFault fault = trial.breaks(Kind.OUTPUT_STUCK_ON, HEATER, 0);
      Duration off =
          trial.until(() -> !trial.isCommanded(STORAGE, OutputKind.HEATER), Duration.ofMinutes(30));
      Duration aired =
          trial.until(
              () ->
                  trial.ruling(STORAGE, OutputKind.EXHAUST).reason().because()
                      == ReasonCode.AIRS_UNBIDDEN_HEAT,
              Duration.ofMinutes(30));
      double warmest = 0;
      for (int i = 0; i < 12 * 360; i++) {
        trial.tick();
        warmest = Math.max(warmest, trial.airC(STORAGE));
      }
      Duration called = trial.calledAfter(AlarmKind.HEATER_RUNAWAY);
      assertThat(called).isLessThanOrEqualTo(Duration.ofMinutes(15));
      assertThat(trial.isHeartbeatStopped()).isTrue();
      assertThat(trial.isCommanded(STORAGE, OutputKind.CIRCULATION)).isTrue();
      trial.mends(fault);
      trial.live(Duration.ofHours(6));
      assertThat(trial.isCommanded(STORAGE, OutputKind.EXHAUST)).isFalse();
      return trial.row(
          "heater relay welded on",
          "cannot open it, but stops the heartbeat: its relay opens the contactor before all"
              + " heaters. Without one, as here, airs the heat away while outside is cooler: the"
              + " room reached "
              + Math.round(warmest)
              + " C, and the high limit reset by hand is the bound",
          "commands off after "
              + said(off)
              + ", the heartbeat stops after "
              + said(called)
              + " (bound 15 min), airs "
              + said(aired)
              + " after the command",
          "\"Moves the air: the heater is switched off, yet it went on warming ...\", \"Airing: the"
              + " heater is switched off ...\"",
          "goes back to its range; the heartbeat comes back when a person resets the alarm with the"
              + " code that stands on the board, and not by a restart");
    }
  }

  private static FaultRow heaterDead(Path folder, Kind kind) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.untilHeating();
      ShedFault fault = trial.breaks(kind, kind == Kind.SUPPLY_LOST ? "" : HEATER, 0);
      Duration seen =
          trial.until(
              () ->
                  trial.ruling(STORAGE, OutputKind.HEATER).reason().because()
                      == ReasonCode.HEAT_WITHOUT_EFFECT,
              Duration.ofHours(3));
      assertThat(seen).isLessThanOrEqualTo(Duration.ofMinutes(35));
      assertThat(trial.watch(STORAGE).isHeaterDead()).isTrue();
      trial.mends(fault);
      Duration heats =
          trial.until(
              () -> trial.airC(STORAGE) > 11 && !trial.watch(STORAGE).isHeaterDead(),
              Duration.ofHours(6));
      assertThat(heats).isLessThan(Duration.ofHours(3));
      return kind == Kind.SUPPLY_LOST
          ? trial.row(
              "relay board has lost its supply",
              "all outputs are off and nothing says so; seen like a dead heater",
              said(seen),
              "as above",
              "everything runs as commanded from that moment")
          : trial.row(
              "heater element dead",
              "goes on trying: 20 min of heat, 10 min of pause",
              said(seen) + " (bound 35 min, because the air goes on rising at first)",
              "\"Heating pauses: in 20 min the air did not get warmer. Look at heater and probe\";"
                  + " the watch of the room calls the heater dead",
              "heats within " + said(heats));
    }
  }

  private static FaultRow fanDead(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.breaks(Kind.OUTPUT_DEAD, "storage-circulation", 0);
      trial.live(Duration.ofHours(6));
      assertThat(trial.told(STORAGE)).isEmpty();
      assertThat(trial.airC(STORAGE)).isBetween(9.0, 14.0);
      return trial.row(
          "circulation fan dead",
          "heats on: the commanded fan is trusted. The heater's own cut-out and its air-flow switch"
              + " are the bound",
          "not seen",
          "nothing",
          "nothing to do");
    }
  }

  private static FaultRow fanStuck(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.breaks(Kind.OUTPUT_STUCK_ON, "storage-circulation", 0);
      trial.live(Duration.ofHours(6));
      assertThat(trial.airC(STORAGE)).isBetween(9.0, 14.0);
      return trial.row(
          "circulation fan stuck on",
          "the room is kept; a few W of heat and a drier store",
          "not seen",
          "nothing",
          "nothing to do");
    }
  }

  private static FaultRow exhaustOpen(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.live(Duration.ofHours(12));
      ShedFault fault = trial.breaks(Kind.OUTPUT_STUCK_ON, EXHAUST, 0);
      double before = trial.airC(STORAGE);
      Duration heats =
          trial.until(() -> trial.isCommanded(STORAGE, OutputKind.HEATER), Duration.ofMinutes(30));
      double coldest = before;
      boolean isSeen = false;
      for (int i = 0; i < 12 * 360; i++) {
        trial.tick();
        coldest = Math.min(coldest, trial.airC(STORAGE));
        isSeen |= trial.watch(STORAGE).minutesToCold() != RoomFacts.NOT_FORECAST;
      }
      assertThat(isSeen).isTrue();
      trial.mends(fault);
      Duration back = trial.until(() -> trial.airC(STORAGE) > 10, Duration.ofHours(6));
      return trial.row(
          "exhaust damper stuck open, freezing outside",
          "heats against it; a heater of 750 W lost: the room went down to "
              + Math.round(coldest * 10) / 10.0
              + " C in 12 h",
          "heat after " + said(heats),
          "the forecast of cold speaks",
          "10 C again after " + said(back));
    }
  }

  private static FaultRow exhaustClosed(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.breaks(Kind.OUTPUT_DEAD, EXHAUST, 0);
      trial.live(Duration.ofHours(24));
      assertThat(trial.airC(STORAGE)).isBetween(9.0, 14.0);
      return trial.row(
          "exhaust stuck closed",
          "temperature is kept; the day's fresh air counts as given and was not, and damp stays",
          "not seen",
          "nothing until it is too damp",
          "nothing to do");
    }
  }

  private static FaultRow doorOpen(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.until(
          () -> trial.reason(OutputKind.HEATER).startsWith("Warm enough"), Duration.ofHours(3));
      ShedFault fault = trial.breaks(Kind.DOOR_OPEN, STORAGE, 0.5);
      Duration seen =
          trial.until(() -> trial.watch(STORAGE).isFallingFast(), Duration.ofMinutes(10));
      Duration heats =
          trial.until(() -> trial.isCommanded(STORAGE, OutputKind.HEATER), Duration.ofMinutes(10));
      assertThat(seen).isLessThanOrEqualTo(Duration.ofMinutes(3));
      trial.live(Duration.ofHours(8));
      double cold = trial.airC(STORAGE);
      trial.mends(fault);
      Duration back = trial.until(() -> trial.airC(STORAGE) > 10, Duration.ofHours(12));
      return trial.row(
          "door half open on a freezing night",
          "heats, and loses: " + Math.round(cold * 10) / 10.0 + " C after 8 h",
          "seen after " + said(seen) + " (bound 3 min)",
          "the watch of the room sees the air fall; heat "
              + (heats.isZero() ? "already on" : "after " + said(heats)),
          "10 C again after " + said(back));
    }
  }

  private static FaultRow relayLost(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.untilHeating();
      ShedFault fault = trial.breaks(Kind.RELAY_LOST, HEATER, 0);
      Duration told =
          trial.until(() -> trial.isTold("its board does not answer"), Duration.ofMinutes(1));
      assertThat(told).isLessThanOrEqualTo(Duration.ofSeconds(30));
      trial.live(Duration.ofHours(1));
      trial.mends(fault);
      trial.tick();
      assertThat(trial.told(STORAGE)).isEmpty();
      return trial.row(
          "a relay cannot be reached while it is on",
          "says so at each tick and goes on asking. A network relay switches itself off within its"
              + " `auto_off`, at most 60 s (settings without one are refused for a heater); a wired"
              + " one stays as it is until the heartbeat relay opens",
          said(told) + " (bound 30 s)",
          "the output: \"relay storage-heater was not switched: its board does not answer\"",
          "the next tick's command reaches it");
    }
  }

  private static FaultRow hunting(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      int both = 0;
      int switched = trial.shed.meter(EXHAUST).switchings();
      int ticks = 24 * 360;
      for (int i = 0; i < ticks; i++) {
        trial.tick();
        both +=
            trial.isCommanded(STORAGE, OutputKind.HEATER)
                    && trial.isCommanded(STORAGE, OutputKind.EXHAUST)
                ? 1
                : 0;
      }
      int switchings = trial.shed.meter(EXHAUST).switchings() - switched;
      assertThat(switchings).isLessThan(100);
      return trial.row(
          "heat and exhaust hunting",
          "in a healthy January day both ran together for "
              + said(Duration.ofSeconds(both * 10L))
              + ", and the exhaust was switched "
              + switchings
              + " times",
          "does not apply",
          "the reasons of the outputs",
          "does not apply");
    }
  }

  private static FaultRow contactWorn(Path folder) throws Exception {
    int life = 150;
    try (TrialShed trial =
        TrialShed.of(
            TrialShed.settings(
                folder,
                example ->
                    example.replace(
                        "[outputs.storage-heater]",
                        "[outputs.storage-heater]\ncontact_life = " + life)))) {
      trial.live(Duration.ofHours(12));
      trial.watchesCalls();
      Duration told =
          trial.until(
              () -> {
                if (trial.time.now().nanos() % TEN_MINUTES_NANOS == 0) {
                  trial.daemon.hear();
                  trial.daemon.flush();
                }
                return trial.calls().contains(AlarmKind.CONTACT_WORN);
              },
              Duration.ofHours(24));
      assertThat(told).isPositive();
      // Counted every ten minutes, of what was flushed ten minutes before.
      assertThat(trial.shed.meter(HEATER).switchings()).isBetween(2 * life - 2, 2 * life + 20);
      return trial.row(
          "contact at the end of its life",
          "runs on; counts each closing from the day on which the output was last tried",
          "at the closing that its `contact_life` allows (" + life + " here)",
          "nothing where no `contact_life` is stated",
          "`commission` after the contact was replaced: counts anew");
    }
  }
}
