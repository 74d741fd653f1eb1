package rindward.controller.settings;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rindward.controller.journal.Proof;
import rindward.controller.journal.ProofTried;
import rindward.controller.journal.Recorded;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.controller.room.RoomPurpose;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.hardware.OutputKind;
import rindward.hardware.wired.NetworkRelayDriver;
import rindward.hardware.wired.Simulated;

/**
 * What must be shown of the protection of a shed's heat, and what of it was: asked by
 * commissioning, check and page alike. A heater on another part than then counts as new.
 */
public final class SafetyProofs {
  private SafetyProofs() {}

  /**
   * Returns everything that must be shown, in the order of trying it; empty where nothing real
   * heats.
   *
   * @param journal what was said and still stands
   */
  public static List<ProofState> of(Settings settings, List<Recorded> journal, Instant now) {
    List<ProofState> all = new ArrayList<>();
    List<OutputSetting> heaters = heaters(settings);
    if (!heaters.isEmpty()) {
      settings
          .safety()
          .asOutput()
          .ifPresent(
              heart -> all.add(state("", Proof.HEARTBEAT_STOPPED, heart, journal, settings, now)));
    }
    for (OutputSetting heater : heaters) {
      for (Proof proof : needed(settings, heater)) {
        all.add(state(heater.room(), proof, heater, journal, settings, now));
      }
    }
    return all;
  }

  /**
   * Tells whether a room may be heated: everything was shown once, or all but its high limit and
   * the owner gave their word.
   */
  public static boolean mayHeat(
      String room, Settings settings, List<Recorded> journal, Instant now) {
    return of(settings, journal, now).stream()
        .filter(state -> state.room().isEmpty() || state.room().equals(room))
        .allMatch(
            state ->
                state.isShown()
                    || (state.proof() == Proof.HIGH_LIMIT
                        && word(room, settings, journal, now).isShown()));
  }

  /** Returns the same, and behind a limit that was not shown the owner's word, if it was given. */
  public static List<ProofState> withWord(Settings settings, List<Recorded> journal, Instant now) {
    List<ProofState> all = new ArrayList<>();
    for (ProofState state : of(settings, journal, now)) {
      all.add(state);
      if (state.proof() == Proof.HIGH_LIMIT && !state.isShown()) {
        ProofState word = word(state.room(), settings, journal, now);
        if (word.isShown()) {
          all.add(word);
        }
      }
    }
    return all;
  }

  /** Returns one sentence for each thing that is missing, due, or stands on the owner's word. */
  public static List<String> warnings(Settings settings, List<Recorded> journal, Instant now) {
    List<String> all = new ArrayList<>();
    withWord(settings, journal, now).forEach(state -> state.warning().ifPresent(all::add));
    return all;
  }

  /** Returns how it stands with the owner's word for heat without a proven limit. */
  public static ProofState word(
      String room, Settings settings, List<Recorded> journal, Instant now) {
    return heaters(settings).stream()
        .filter(heater -> heater.room().equals(room))
        .findFirst()
        .map(h -> state(room, Proof.HEAT_WITHOUT_LIMIT, h, journal, settings, now))
        .orElse(new ProofState(room, Proof.HEAT_WITHOUT_LIMIT, List.of(), true, settings.zone()));
  }

  /** Returns every real heater. */
  public static List<OutputSetting> heaters(Settings settings) {
    return settings.outputs().stream()
        .filter(output -> !(output.driver() instanceof Simulated))
        .filter(output -> isA(OutputKind.HEATER, output, room(output, settings)))
        .toList();
  }

  /** Tells whether a setting's output is the one of a kind in its room. */
  public static boolean isA(OutputKind kind, OutputSetting output, Room room) {
    Output known = room.outputs().get(kind);
    return known != null && known.name().equals(output.name());
  }

  private static Room room(OutputSetting output, Settings settings) {
    return settings.rooms().stream()
        .filter(room -> room.name().equals(output.room()))
        .findFirst()
        .orElseThrow();
  }

  private static List<Proof> needed(Settings settings, OutputSetting heater) {
    Room room = room(heater, settings);
    List<Proof> needed = new ArrayList<>();
    needed.add(Proof.RCD_BUTTON);
    needed.add(Proof.RCD_INSTRUMENT);
    if (heater.driver() instanceof NetworkRelayDriver) {
      needed.add(Proof.AUTO_OFF);
    }
    if (room.has(OutputKind.CIRCULATION)) {
      needed.add(Proof.FAN_UNPLUGGED);
    }
    needed.add(Proof.CONTACTOR_BRIDGED);
    if (room.purpose() == RoomPurpose.STORAGE) {
      needed.add(Proof.FROST_THERMOSTAT);
    }
    needed.add(Proof.HIGH_LIMIT);
    return needed;
  }

  private static ProofState state(
      String room,
      Proof proof,
      OutputSetting part,
      List<Recorded> journal,
      Settings settings,
      Instant now) {
    List<Recorded> found =
        journal.stream()
            .filter(
                said ->
                    said.entry() instanceof ProofTried tried
                        && tried.proof() == proof
                        && tried.room().equals(room)
                        && tried.place().equals(part.driver().place()))
            .sorted(Comparator.comparing((Recorded said) -> said.entry().at()).reversed())
            .toList();
    ZoneId zone = settings.zone();
    LocalDate due = LocalDate.ofInstant(now, zone).minusYears(1);
    boolean isDue =
        found.isEmpty() || LocalDate.ofInstant(found.get(0).entry().at(), zone).isBefore(due);
    return new ProofState(room, proof, found, isDue, zone);
  }
}
