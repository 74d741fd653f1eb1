package rindward.controller.journal;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;

/**
 * What somebody wants of a room from now on, instead of what its settings say.
 *
 * @param range the air it should have; null for none of its own
 * @param slideMilliCPerDay how fast the range may come down to it; 0 as the settings say
 * @param rests whether the room is to rest, with everything off; without a range and without rest
 *     it goes back to its settings
 */
public record RoomAsked(
    String room, @Nullable Range range, int slideMilliCPerDay, boolean rests, Instant at)
    implements Entry {
  private static final Parts<Limits> LIMITS =
      Parts.of(Limits.class, Field.whole("low"), Field.whole("high"));
  private static final Parts<Range> RANGE =
      Parts.of(Range.class, Field.of("temperature", LIMITS), Field.of("humidity", LIMITS));

  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<RoomAsked> KIND =
      EntryKind.of(
              "room-asked",
              RoomAsked.class,
              Field.text("room"),
              Field.of("range", RANGE).orNothing(),
              Field.whole("slideMilliCPerDay"),
              Field.yes("rests"),
              Field.at())
          .saidBy(Speaker.OWNER)
          .where(RoomAsked::refusal);

  private static final Limits TEMPERATURES = new Limits(-5_000, 45_000);
  private static final Limits HUMIDITIES = new Limits(0, 100_000);

  private Optional<String> refusal() {
    if (range == null) {
      return Optional.empty();
    }
    return rests
        ? Optional.of("room was to rest but a room that rests has no range of its own")
        : outside("temperature", range.temperature(), TEMPERATURES, "C")
            .or(() -> outside("humidity", range.humidity(), HUMIDITIES, "%"));
  }

  private static Optional<String> outside(String what, Limits asked, Limits most, String unit) {
    return most.contains(asked.low()) && most.contains(asked.high())
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "%s was '%.1f..%.1f' but it must lie within %d..%d %s",
                what,
                asked.low() / 1000.0,
                asked.high() / 1000.0,
                most.low() / 1000,
                most.high() / 1000,
                unit));
  }

  @Override
  public String subject() {
    return room;
  }
}
