package rindward.controller.command.shed;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rindward.controller.journal.Entry;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.Proof;
import rindward.controller.journal.ProofTried;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lots;
import rindward.controller.room.Room;
import rindward.controller.settings.ProofState;
import rindward.controller.settings.SafetyProofs;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.hardware.OutputKind;
import rindward.hardware.wired.Simulated;

/**
 * The walk through a shed: the heartbeat, then each room's outputs, its fan first and its heater
 * last, then what protects that room. A heater is noted as tried, and its room controlled, only
 * once all of that was shown, or the owner gave their word for the limit.
 */
final class CommissioningWalk {
  private static final String NOT_NOTED = "was not noted as tried.";

  private final Settings settings;
  private final OutputTrial trial;
  private final ProofWalk proofs;
  private final Function<Entry, Optional<String>> notes;
  private final Supplier<List<Recorded>> journal;
  private final Supplier<Instant> now;
  private final Consumer<String> tells;
  private final String by;

  /**
   * @param notes keeps an entry; returns why it was refused
   * @param journal everything said so far
   * @param tells takes a line for the person
   * @param by who looks
   */
  CommissioningWalk(
      Settings settings,
      OutputTrial trial,
      ProofWalk proofs,
      Function<Entry, Optional<String>> notes,
      Supplier<List<Recorded>> journal,
      Supplier<Instant> now,
      Consumer<String> tells,
      String by) {
    this.settings = settings;
    this.trial = trial;
    this.proofs = proofs;
    this.notes = notes;
    this.journal = journal;
    this.now = now;
    this.tells = tells;
    this.by = by;
  }

  /** Walks; tells whether all was tried and shown in the end, this time or within a year. */
  boolean run() {
    settings.safety().asOutput().ifPresent(this::heartbeat);
    for (Room room : settings.rooms()) {
      outputsOf(room).forEach(output -> output(output, room));
    }
    return settings.safety().asOutput().stream().allMatch(this::isTried)
        && settings.outputs().stream().allMatch(this::isTried)
        && states().stream().noneMatch(ProofState::isDue);
  }

  private void heartbeat(OutputSetting heartbeat) {
    told(
        heartbeat,
        () -> {
          OptionalInt seconds = trial.ofHeartbeat(heartbeat);
          if (seconds.isEmpty()) {
            return NOT_NOTED;
          }
          String sentence = note(heartbeat);
          note(
              new ProofTried(
                  "",
                  Proof.HEARTBEAT_STOPPED,
                  heartbeat.driver().place(),
                  "timed by commission",
                  seconds.getAsInt(),
                  null,
                  null,
                  now.get()));
          return sentence + " Everything heavy was open after " + seconds.getAsInt() + " s.";
        });
  }

  private void output(OutputSetting output, Room room) {
    boolean isHeater = SafetyProofs.isA(OutputKind.HEATER, output, room);
    List<OutputSetting> fans = isHeater ? fansOf(room) : List.of();
    boolean[] ran = {false};
    told(
        output,
        () -> {
          if (!fans.stream().allMatch(this::isTried)) {
            return "was not tried: the fan that carries its heat away was not seen to run.";
          }
          ran[0] = trial.of(output, fans);
          return !ran[0] ? NOT_NOTED : isHeater ? "ran as it should." : note(output);
        });
    if (isHeater && (ran[0] || isTried(output))) {
      show(output, fans, room, ran[0]);
    }
  }

  private void show(OutputSetting heater, List<OutputSetting> fans, Room room, boolean hasRun) {
    for (ProofState state : states()) {
      if (state.room().equals(room.name()) && state.isDue()) {
        try {
          proofs.of(state.proof(), heater, fans, now.get()).ifPresent(this::shown);
        } catch (IOException e) {
          tells.accept("Room " + room.name() + ": not tried: " + e.getMessage());
        }
      }
    }
    if (!mayHeat(room) && isLimitAllThatLacks(room)) {
      proofs.word(heater, now.get()).ifPresent(this::shown);
    }
    if (!hasRun) {
      return;
    }
    tells.accept(
        mayHeat(room)
            ? "Output " + heater.name() + " " + note(heater)
            : "Output "
                + heater.name()
                + " was not noted as tried: its room is only observed until it was shown that "
                + lacking(room).map(Proof::sentence).collect(Collectors.joining("; that "))
                + ".");
  }

  private void shown(ProofTried tried) {
    String refusal = note(tried);
    tells.accept(
        "Room "
            + tried.room()
            + ": "
            + (refusal.isEmpty()
                ? "noted, by " + by + ", that " + tried.proof().sentence() + "."
                : refusal));
  }

  private boolean isLimitAllThatLacks(Room room) {
    return lacking(room).allMatch(proof -> proof == Proof.HIGH_LIMIT);
  }

  private Stream<Proof> lacking(Room room) {
    return states().stream()
        .filter(state -> state.room().isEmpty() || state.room().equals(room.name()))
        .filter(state -> !state.isShown())
        .map(ProofState::proof);
  }

  private boolean mayHeat(Room room) {
    return SafetyProofs.mayHeat(room.name(), settings, Lots.standing(journal.get()), now.get());
  }

  private List<ProofState> states() {
    return SafetyProofs.of(settings, Lots.standing(journal.get()), now.get());
  }

  /** The fan first: a heater is tried beside it. */
  private List<OutputSetting> outputsOf(Room room) {
    List<OutputSetting> own =
        new ArrayList<>(
            settings.outputs().stream().filter(o -> o.room().equals(room.name())).toList());
    own.sort(
        Comparator.comparing(
            output ->
                SafetyProofs.isA(OutputKind.CIRCULATION, output, room)
                    ? 0
                    : SafetyProofs.isA(OutputKind.HEATER, output, room) ? 2 : 1));
    return own;
  }

  private List<OutputSetting> fansOf(Room room) {
    return settings.outputs().stream()
        .filter(output -> output.room().equals(room.name()))
        .filter(output -> SafetyProofs.isA(OutputKind.CIRCULATION, output, room))
        .filter(output -> !(output.driver() instanceof Simulated))
        .toList();
  }

  private boolean isTried(OutputSetting output) {
    return TriedParts.isTried(output, journal.get());
  }

  /** Something that is tried; returns how it went, as the rest of a sentence. */
  @FunctionalInterface
  private interface Trial {
    String run() throws IOException;
  }

  private void told(OutputSetting output, Trial what) {
    String said;
    try {
      said = what.run();
    } catch (IOException e) {
      said = "could not be tried: " + e.getMessage();
    }
    tells.accept("Output " + output.name() + " " + said);
  }

  private String note(OutputSetting output) {
    String refusal =
        note(new OutputTried(output.room(), output.name(), output.driver().place(), now.get()));
    return refusal.isEmpty() ? "was tried by " + by + "." : refusal;
  }

  private String note(Entry entry) {
    return notes.apply(entry).map(why -> "could not be noted: " + why).orElse("");
  }
}
