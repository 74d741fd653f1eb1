package rindward.controller.command.shed;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Proof;
import rindward.controller.journal.ProofTried;
import rindward.controller.settings.Settings.OutputSetting;

/**
 * Asks for each thing that protects a heated room, tries what a program can, and tells the result.
 */
final class ProofWalk {
  /** The owner says all of this, or nothing. */
  static final String WORD = "I heat without a proven limit";

  private static final int LONGEST_TEXT = 300;

  private final OutputTrial trial;
  private final Questions asks;

  ProofWalk(OutputTrial trial, Questions asks) {
    this.trial = trial;
    this.asks = asks;
  }

  /**
   * Asks for one.
   *
   * @param fans run while the heater is tried
   * @return what was shown; empty where it was not
   * @throws IOException in one sentence, when a part could not be switched
   */
  Optional<ProofTried> of(Proof proof, OutputSetting heater, List<OutputSetting> fans, Instant now)
      throws IOException {
    return switch (proof) {
      case FAN_UNPLUGGED ->
          trial.ofHeaterWithoutAir(heater) ? shown(proof, heater, null, null, "", now) : none();
      case AUTO_OFF -> {
        OptionalInt seconds = trial.ofAutoOff(heater, fans);
        yield seconds.isPresent()
            ? shown(proof, heater, seconds.getAsInt(), null, "", now)
            : none();
      }
      case HIGH_LIMIT -> {
        if (!seen(proof, "Warm its sensor, or turn it down to the room, with the heater on.")) {
          yield none();
        }
        OptionalInt opened = asks.temperature("At what temperature did it open?");
        yield shown(
            proof,
            heater,
            null,
            opened,
            asks.words("Which probe hangs where its sensor hangs? (leave it empty if none does)"),
            now);
      }
      case FROST_THERMOSTAT -> {
        if (!seen(proof, "Chill its sensor, with the board off or its 24 V away.")) {
          yield none();
        }
        yield shown(
            proof, heater, null, asks.temperature("To what temperature is it set?"), "", now);
      }
      case CONTACTOR_BRIDGED ->
          confirmed(
              proof,
              heater,
              "The electrician bridges or holds in the heater's contactor, its load beyond it off"
                  + " or a lamp; then let the heart stop, then open the limit.",
              now);
      case RCD_INSTRUMENT ->
          confirmed(
              proof, heater, "Only whoever may do so: the sheet with its times is kept.", now);
      case RCD_BUTTON -> confirmed(proof, heater, "Press the button of each.", now);
      case HEARTBEAT_STOPPED, HEAT_WITHOUT_LIMIT -> none();
    };
  }

  /** Asks the owner for their word where the limit was not shown to open. */
  Optional<ProofTried> word(OutputSetting heater, Instant now) {
    String said =
        asks.words(
            "Nobody has shown that the high limit of room "
                + heater.room()
                + " opens. If you are the owner and heat it all the same, write: "
                + WORD
                + ":");
    return said.equals(WORD)
        ? Optional.of(tried(Proof.HEAT_WITHOUT_LIMIT, heater, said, null, null, null, now))
        : none();
  }

  private Optional<ProofTried> confirmed(
      Proof proof, OutputSetting heater, String toDo, Instant now) {
    return seen(proof, toDo) ? shown(proof, heater, null, null, "", now) : none();
  }

  private boolean seen(Proof proof, String toDo) {
    return asks.test(toDo + " Was it seen that " + proof.sentence() + "?");
  }

  private Optional<ProofTried> shown(
      Proof proof,
      OutputSetting heater,
      @Nullable Integer seconds,
      @Nullable OptionalInt temperature,
      String probe,
      Instant now) {
    String how = asks.words("How was it tried, by whom, and what was seen?");
    if (how.isBlank() || how.length() > LONGEST_TEXT) {
      return none();
    }
    Integer milliC = temperature == null || temperature.isEmpty() ? null : temperature.getAsInt();
    return Optional.of(
        tried(proof, heater, how, seconds, milliC, probe.isEmpty() ? null : probe, now));
  }

  private static ProofTried tried(
      Proof proof,
      OutputSetting heater,
      String how,
      @Nullable Integer seconds,
      @Nullable Integer milliC,
      @Nullable String probe,
      Instant now) {
    return new ProofTried(
        heater.room(), proof, heater.driver().place(), how, seconds, milliC, probe, now);
  }

  private static Optional<ProofTried> none() {
    return Optional.empty();
  }
}
