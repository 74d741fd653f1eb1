package rindward.controller.journal;

import java.time.Instant;

/**
 * Frost touched the fruits, before harvest or since.
 *
 * @param minimumMilliC lowest air temperature in thousandths of a degree C
 * @param minutes how long it froze
 * @param covered whether leaves or a cloth lay over the fruits
 * @param waterSoaked whether the rind looked water-soaked afterwards
 */
public record FrostNoted(
    String lot, int minimumMilliC, int minutes, boolean covered, boolean waterSoaked, Instant at)
    implements OfLot {
  private static final int COLDEST_MILLI_C = -40_000;

  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<FrostNoted> KIND =
      EntryKind.of(
          "frost",
          FrostNoted.class,
          Field.lot(),
          Field.thousandths("minimumMilliC")
              .column("minimum_c")
              .called("minimum")
              .within(COLDEST_MILLI_C, 0, "frost lies from -40 to 0 C"),
          Field.whole("minutes").or(0),
          Field.yes("covered"),
          Field.yes("waterSoaked").column("water_soaked"),
          Field.at());
}
