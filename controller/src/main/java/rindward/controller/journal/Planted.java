package rindward.controller.journal;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A plot was planned, and its lot has a code and a label before there is a fruit.
 *
 * @param check whether it is the variety the others are compared with
 * @param plants how many, at least one
 * @param expectedDays from transplanting (or sowing) to harvest, as the seed packet says
 */
public record Planted(
    String lot,
    String plot,
    String crop,
    String variety,
    boolean check,
    int plants,
    @Nullable LocalDate sown,
    @Nullable LocalDate transplanted,
    @Nullable Integer expectedDays,
    Instant at)
    implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Planted> KIND =
      EntryKind.of(
          "planted",
          Planted.class,
          Limit.newCode(),
          Field.text("plot").notBlank(),
          Field.crop(),
          Field.text("variety"),
          Field.yes("check"),
          Field.whole("plants").or(1).within(1, Limit.MOST_FRUITS),
          Field.day("sown").orNothing(),
          Field.day("transplanted").orNothing(),
          Field.whole("expectedDays").column("expected_days").orNothing(),
          Field.at());

  /** Returns the same plan for a lot of another code. */
  public Planted withLot(String code) {
    return new Planted(
        code, plot, crop, variety, check, plants, sown, transplanted, expectedDays, at);
  }
}
