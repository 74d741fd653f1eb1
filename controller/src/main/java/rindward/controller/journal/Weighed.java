package rindward.controller.journal;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Fruits were put on a scale.
 *
 * @param fruit tag of one sample fruit; null for crates of the lot
 * @param count fruits on the scale
 * @param grossGrams with crates
 * @param tareGrams the crates alone; 0 without
 */
public record Weighed(
    String lot, @Nullable String fruit, int count, int grossGrams, int tareGrams, Instant at)
    implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Weighed> KIND =
      EntryKind.of(
              "weighed",
              Weighed.class,
              Field.lot(),
              Field.text("fruit").orNothing(),
              Field.whole("count").or(1).within(1, Limit.MOST_FRUITS),
              Field.whole("grossGrams")
                  .column("weight_g")
                  .called("weight in grams")
                  .within(1, Limit.MOST_GRAMS),
              Field.whole("tareGrams")
                  .column("tare_g")
                  .called("tare in grams")
                  .or(0)
                  .within(0, Limit.MOST_GRAMS),
              Field.at())
          .where(w -> FieldErrors.whole("tare in grams", w.tareGrams(), 0, w.grossGrams() - 1))
          .where(
              w ->
                  w.fruit() != null && w.count() != 1
                      ? FieldErrors.wrong("count", w.count(), "a tag hangs on one fruit")
                      : Optional.empty());

  /** Returns the weight of the fruits alone. */
  public int netGrams() {
    return grossGrams - tareGrams;
  }
}
