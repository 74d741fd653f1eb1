package rindward.controller.journal;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import rindward.controller.crop.Days;

/**
 * Evidence of how ripe fruits were when they were picked.
 *
 * @param lowDays least days after fruit set at picking
 * @param highDays most days after fruit set at picking
 * @param fruits in how many fruits it was seen; 0 if it holds for the whole lot
 */
public record RipenessNoted(
    String lot, RipenessSign sign, int lowDays, int highDays, int fruits, Instant at)
    implements OfLot {
  private static final int MOST_DAYS = 400;

  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<RipenessNoted> KIND =
      EntryKind.of(
              "ripeness",
              RipenessNoted.class,
              Field.lot(),
              Field.word("sign", RipenessSign.class),
              Field.whole("lowDays")
                  .column("days_low")
                  .called("days after fruit set")
                  .within(0, MOST_DAYS),
              Field.whole("highDays")
                  .column("days_high")
                  .called("days after fruit set")
                  .within(0, MOST_DAYS),
              Field.whole("fruits").column("count").or(0).within(0, Limit.MOST_FRUITS),
              Field.at())
          .completing(RipenessNoted::withUsualDays)
          .where(
              r -> FieldErrors.whole("days after fruit set", r.highDays(), r.lowDays(), MOST_DAYS));

  /** A sign that stands for usual days needs none said; the later days are at least the earlier. */
  private static FieldTexts withUsualDays(FieldTexts row) {
    Map<String, String> fields = new HashMap<>(row.fields());
    Days usual =
        Arrays.stream(RipenessSign.values())
            .filter(sign -> sign.toString().equalsIgnoreCase(row.text("sign").strip()))
            .findFirst()
            .flatMap(RipenessSign::usual)
            .orElse(null);
    if (row.text("days_low").isBlank() && usual != null) {
      fields.put("days_low", Integer.toString(usual.low()));
    }
    if (row.text("days_high").isBlank()) {
      fields.put(
          "days_high", usual == null ? row.text("days_low") : Integer.toString(usual.high()));
    }
    return new FieldTexts(fields, row.zone(), row.cropKey());
  }
}
