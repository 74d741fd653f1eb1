package rindward.dashboard.request;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;

/**
 * From when until when a query asks; the end defaults to now, the begin to so many days before the
 * end, or one. Whoever asks for the last days names no clock but the shed's.
 *
 * @param from inclusive
 * @param to exclusive, after {@code from}
 */
public record Stretch(Instant from, Instant to) {
  private static final Duration LONGEST = Duration.ofDays(400);
  private static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");
  private static final int USUAL_SLOTS = 400;
  private static final int MOST_SLOTS = 2_000;

  /**
   * Reads {@code from}, {@code to} and {@code days}.
   *
   * @throws BadRequestResponse when they cannot be read, or make no sense together
   */
  public static Stretch of(Context ctx, Instant now) {
    Instant to = instant(ctx, "to", now);
    int days = Numbers.in(ctx, "days", 1, 1, (int) LONGEST.toDays());
    Instant from = instant(ctx, "from", to.minus(Duration.ofDays(days)));
    if (!from.isBefore(to) || Duration.between(from, to).compareTo(LONGEST) > 0) {
      throw new BadRequestResponse(
          "from was '%s' but it must be before to ('%s') and at most %d days earlier."
              .formatted(from, to, LONGEST.toDays()));
    }
    return new Stretch(from, to);
  }

  /**
   * Reads {@code slots}: into how many parts the stretch is divided.
   *
   * @throws BadRequestResponse when it is not a number that makes sense
   */
  public static int slots(Context ctx) {
    return Numbers.in(ctx, "slots", USUAL_SLOTS, 1, MOST_SLOTS);
  }

  private static Instant instant(Context ctx, String name, Instant otherwise) {
    String text = ctx.queryParam(name);
    if (text == null) {
      return otherwise;
    }
    try {
      Instant instant = Instant.parse(text);
      if (instant.isAfter(Instant.EPOCH) && instant.isBefore(LATEST)) {
        return instant;
      }
    } catch (DateTimeException notAnInstant) {
      // Said below.
    }
    throw new BadRequestResponse(
        name + " was '" + text + "' but it must be an instant such as 2026-10-03T09:15:00Z.");
  }
}
