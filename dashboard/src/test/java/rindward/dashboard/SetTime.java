package rindward.dashboard;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** A time that stands still until it is moved. */
final class SetTime implements InstantSource {
  private volatile Instant now;

  SetTime(Instant start) {
    now = start;
  }

  void advance(Duration by) {
    now = now.plus(by);
  }

  @Override
  public Instant instant() {
    return now;
  }
}
