package rindward.controller.settings;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The limit that opens a room's heat without this program: what its owner says of it. The program
 * neither reads nor switches it; it holds the room's range against it and reminds of its trial.
 *
 * @param temperatureMilliC where it opens
 * @param reset how it closes again
 * @param hangs where its sensor is, in the owner's words
 * @param tried the day on which it was last seen to open; null if it never was
 */
public record HighLimit(
    int temperatureMilliC, Reset reset, String hangs, @Nullable LocalDate tried) {

  /** How a limit that has opened closes again. */
  public enum Reset {
    /** Somebody presses its button, and so learns that it opened. */
    BY_HAND,
    /** It closes when it has cooled, and opens again, until something gives way. */
    BY_ITSELF
  }

  private static final Kind<Integer> TEMPERATURE = Kind.thousandths(20_000, 90_000);
  private static final Kind<LocalDate> DAY =
      new Kind<>(
          "be a day, written 2026-09-01 without quotes",
          LocalDate.EPOCH,
          value -> value instanceof LocalDate day ? day : null);

  /** Reads the limit of a room; empty where the file declares none. */
  static Optional<HighLimit> read(TableReader room) {
    return room.table("high_limit")
        .map(
            table -> {
              HighLimit limit =
                  new HighLimit(
                      table.required("temperature", TEMPERATURE),
                      table.required("reset", Kind.choice(Reset.class)),
                      table.required("hangs", Kind.TEXT),
                      table.find("tried", DAY).orElse(null));
              table.rejectUnknown();
              return limit;
            });
  }
}
