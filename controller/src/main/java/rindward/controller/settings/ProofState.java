package rindward.controller.settings;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Proof;
import rindward.controller.journal.ProofTried;
import rindward.controller.journal.Recorded;
import rindward.hardware.Thousandths;

/**
 * How it stands with one thing that must be shown to protect the shed.
 *
 * @param room the room; empty for the whole shed
 * @param found every time it was shown on the part that is wired now, the newest first
 * @param isDue whether it was never shown, or more than a year ago
 * @param zone the farm's, in which its days are told
 */
public record ProofState(
    String room, Proof proof, List<Recorded> found, boolean isDue, ZoneId zone) {
  public ProofState {
    found = List.copyOf(found);
  }

  /** Tells whether it was ever shown. */
  public boolean isShown() {
    return !found.isEmpty();
  }

  /** Returns the last time it was shown; null if it never was. */
  public @Nullable Instant at() {
    return found.isEmpty() ? null : found.get(0).entry().at();
  }

  /** Returns what should be done about it, in one sentence; empty while nothing has to be. */
  public Optional<String> warning() {
    if (proof == Proof.HEAT_WITHOUT_LIMIT && isShown()) {
      Recorded word = found.get(0);
      return Optional.of(
          "Room "
              + room
              + ": heats without a proven high limit, by the word of "
              + word.by()
              + " on "
              + LocalDate.ofInstant(word.entry().at(), zone)
              + ".");
    }
    if (!isDue) {
      return Optional.empty();
    }
    String where = room.isEmpty() ? "The shed" : "Room " + room;
    return Optional.of(
        isShown()
            ? where
                + ": that "
                + proof.sentence()
                + " was last shown "
                + result(found.get(0))
                + "; try it again each year with 'rindward commission'."
            : where
                + ": nobody has shown that "
                + proof.sentence()
                + "; 'rindward commission' asks for it.");
  }

  /** Returns every result, the newest first, so that this year's stands beside last year's. */
  public List<String> results() {
    return found.stream().map(this::result).toList();
  }

  private String result(Recorded recorded) {
    ProofTried tried = (ProofTried) recorded.entry();
    LocalDate day = LocalDate.ofInstant(tried.at(), zone);
    List<String> parts =
        List.of(
            tried.seconds() == null ? "" : tried.seconds() + " s",
            tried.temperatureMilliC() == null ? "" : degrees(tried.temperatureMilliC()),
            tried.probe() == null ? "" : "beside probe " + tried.probe(),
            tried.how());
    return "on "
        + day
        + " by "
        + recorded.by()
        + ": "
        + parts.stream().filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
  }

  private static String degrees(int milliC) {
    return String.format(Locale.ROOT, "%.1f C", Thousandths.toDouble(milliC));
  }
}
