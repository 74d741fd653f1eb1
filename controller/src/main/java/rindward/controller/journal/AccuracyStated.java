package rindward.controller.journal;

import java.time.Instant;

/**
 * The probes of a room have this accuracy from now on. It is in the journal because a change of the
 * settings must not rewrite what was certain last month.
 *
 * @param temperatureMilliC plus or minus, thousandths of a degree C
 * @param humidityMilliPct plus or minus, thousandths of a percent
 */
public record AccuracyStated(String room, int temperatureMilliC, int humidityMilliPct, Instant at)
    implements Entry {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<AccuracyStated> KIND =
      EntryKind.of(
              "accuracy",
              AccuracyStated.class,
              Field.text("room"),
              Field.whole("temperatureMilliC"),
              Field.whole("humidityMilliPct"),
              Field.at())
          .saidBy(Speaker.OWNER);

  @Override
  public String subject() {
    return room;
  }
}
