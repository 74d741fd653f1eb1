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
  @Override
  public String subject() {
    return room;
  }

  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.accuracyStated(this);
  }
}
