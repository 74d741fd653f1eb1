package rindward.controller.daemon;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import rindward.controller.control.Tick;
import rindward.controller.store.StoreException;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.hardware.linux.ClockTrust;

/**
 * The time that the record is dated by. While the clock cannot be believed, as on a board without a
 * battery before it has found the network, it goes on evenly from wherever it began, and what is
 * noted waits for its date. A clock that is stepped back into a time of which something is kept is
 * not believed either, until it has left that time: nothing counts twice. For any thread.
 */
final class RecordTime implements Time {
  /** The record begins after this program was written. */
  private static final Instant BUILT = Instant.parse("2026-01-01T00:00:00Z");

  /** A clock that is set right little by little may seem to stand still. */
  private static final Duration SLEWED = Duration.ofSeconds(2);

  /** What is kept from further in the future than this was dated by a wrong clock. */
  private static final Duration LONGEST_OVERLAP = Duration.ofHours(2);

  private final Time clock;
  private final Path root;
  private final SampleLog log;
  private boolean isTrusted;
  private Tick anchor;
  private Instant newest = BUILT;

  /**
   * Begins without trust.
   *
   * @param clock the board's own time
   * @param root where the machine's files begin
   */
  RecordTime(Time clock, Path root, SampleLog log) {
    this.clock = clock;
    this.root = root;
    this.log = log;
    this.anchor = clock.now();
    log.waitForDate();
  }

  @Override
  public synchronized Tick now() {
    Tick said = clock.now();
    if (isTrusted && said.at().plus(SLEWED).isBefore(newest)) {
      isTrusted = false;
      anchor = new Tick(newest, said.nanos());
      log.waitForDate();
    }
    if (!isTrusted) {
      return new Tick(evenly(said), said.nanos());
    }
    newest = said.at().isAfter(newest) ? said.at() : newest;
    return said;
  }

  /**
   * Judges the clock again while it is not believed, and dates what has waited once it is. Reads
   * the disk: not for the control loop.
   */
  void judge(SampleStore store) {
    if (isTrusted()) {
      return;
    }
    Instant newestStored = Instant.EPOCH;
    try {
      newestStored = Instant.ofEpochMilli(store.newestMillis().orElse(0));
    } catch (StoreException e) {
      // Nothing can be kept now, so nothing can be kept twice; the next flush tells what is wrong.
    }
    judge(newestStored);
  }

  private synchronized void judge(Instant newestStored) {
    newest = !isTrusted && newestStored.isAfter(newest) ? newestStored : newest;
    Tick said = clock.now();
    ClockTrust trust = ClockTrust.judge(root, said.at(), newest);
    boolean isPast = !said.at().isAfter(newest);
    boolean isFarPast = said.at().plus(LONGEST_OVERLAP).isBefore(newest);
    boolean isSet = trust == ClockTrust.SYNCHRONISED && (!isPast || isFarPast);
    if (!isTrusted && (isSet || trust == ClockTrust.LATER_THAN_HISTORY)) {
      isTrusted = true;
      Instant kept = isFarPast ? Instant.MIN : newest;
      log.date(
          Duration.between(evenly(said), said.at()).toMillis(),
          kept == Instant.MIN ? Long.MIN_VALUE : kept.toEpochMilli());
      newest = said.at();
    }
  }

  private synchronized boolean isTrusted() {
    return isTrusted;
  }

  private Instant evenly(Tick said) {
    return anchor.at().plusNanos(said.nanos() - anchor.nanos());
  }
}
