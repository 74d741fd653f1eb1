package rindward.controller.journal;

import java.time.Instant;

/**
 * A probe was compared with something better, and this is what is made of its values from then on.
 * It is in the journal, so that it never changes what was measured before.
 *
 * @param probe its name
 * @param place what it hung on then; a probe on another part is another probe
 * @param temperatureMilliC added, thousandths of a degree C
 * @param humidityMilliPct added after the gain, thousandths of a percent
 * @param humidityGainMillionths a million leaves the humidity as it is
 * @param against what it was compared with, in words
 */
public record ProbeCalibrated(
    String probe,
    String place,
    int temperatureMilliC,
    int humidityMilliPct,
    int humidityGainMillionths,
    String against,
    Instant at)
    implements Entry {
  private static final int MOST_OFF_MILLI_C = 5_000;

  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<ProbeCalibrated> KIND =
      EntryKind.of(
              "probe-calibrated",
              ProbeCalibrated.class,
              Field.text("probe"),
              Field.text("place"),
              Field.whole("temperatureMilliC")
                  .called("temperature")
                  .within(-MOST_OFF_MILLI_C, MOST_OFF_MILLI_C),
              Field.whole("humidityMilliPct"),
              Field.whole("humidityGainMillionths")
                  .called("humidity gain")
                  .within(500_000, 2_000_000),
              Field.text("against"),
              Field.at())
          .saidBy(Speaker.OWNER);

  @Override
  public String subject() {
    return probe;
  }
}
