package rindward.controller.journal;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Somebody tried what protects a heated room, and it did what it must. What failed is not said: it
 * is mended and tried again.
 *
 * @param room the room; empty for what protects the whole shed
 * @param place what the heater, or the heartbeat, hung on then; on another part it is another proof
 * @param how how it was tried and what was seen, in the words of whoever tried it
 * @param seconds how long it took; null where that was not measured
 * @param temperatureMilliC where a limit opened or a thermostat was set; null where none was read
 * @param probe the probe that hangs where the limit's sensor hangs; null where none does
 */
public record ProofTried(
    String room,
    Proof proof,
    String place,
    String how,
    @Nullable Integer seconds,
    @Nullable Integer temperatureMilliC,
    @Nullable String probe,
    Instant at)
    implements Entry {
  private static final int LONGEST_TEXT = 300;

  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<ProofTried> KIND =
      EntryKind.of(
              "proof-tried",
              ProofTried.class,
              Field.text("room"),
              Field.word("proof", Proof.class),
              Field.text("place"),
              Field.text("how"),
              Field.whole("seconds").within(0, 600).orNothing(),
              Field.whole("temperatureMilliC")
                  .called("temperature")
                  .within(-20_000, 90_000)
                  .orNothing(),
              Field.text("probe").orNothing(),
              Field.at())
          .saidBy(Speaker.OWNER)
          .where(ProofTried::refusal);

  @Override
  public String subject() {
    return "proofs " + room;
  }

  private Optional<String> refusal() {
    return how.isBlank() || how.length() > LONGEST_TEXT
        ? Optional.of(
            "how was '"
                + how
                + "' but it must say in at most "
                + LONGEST_TEXT
                + " letters how it was tried")
        : Optional.empty();
  }
}
