package rindward.controller.lot;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.TakenBack;
import rindward.controller.journal.Withdrawn;

/** Whether an entry can stand beside what was said before. Each refusal is one sentence. */
public final class EntryCheck {
  /** A watch may be a little ahead of the board's. */
  private static final Duration CLOCK_DIFFERENCE = Duration.ofMinutes(5);

  private EntryCheck() {}

  /**
   * Returns why the entry cannot be taken, or nothing.
   *
   * @param journal everything said so far; what is not of the same subject matters only to a plan
   *     to taste, which is of lots
   * @param crops the crop guide
   * @param now the time it is said
   */
  public static Optional<String> refusal(
      Entry entry, List<Recorded> journal, CropGuide crops, Instant now) {
    if (entry.at().isAfter(now.plus(CLOCK_DIFFERENCE))) {
      return Optional.of(
          "at was '" + entry.at() + "' but it must not lie in the future (now " + now + ")");
    }
    List<Recorded> about =
        journal.stream().filter(r -> r.entry().subject().equals(entry.subject())).toList();
    if (entry instanceof NewerEntry) {
      // Taken over from another journal as it is; only a newer version can judge it.
      return Optional.empty();
    }
    if (entry instanceof Corrected corrected) {
      return correction(corrected, about, crops.keys(), now);
    }
    if (entry instanceof Withdrawn withdrawn) {
      return withdrawal(withdrawn, about, now);
    }
    if (entry instanceof TakenBack back) {
      return takingBack(back, about);
    }
    return Places.refusal(entry, new Standing(about, crops.keys()))
        .or(
            () ->
                entry instanceof SessionPlanned plan
                    ? stopped(plan, journal, crops)
                    : Optional.empty())
        .or(() -> overdrawn(entry, about, now));
  }

  /** Nobody plans to taste what must not be eaten. */
  private static Optional<String> stopped(
      SessionPlanned plan, List<Recorded> journal, CropGuide crops) {
    Lots lots = Lots.of(journal);
    return plan.samples().stream()
        .map(Served::lot)
        .flatMap(code -> lots.find(code).stream())
        .flatMap(lot -> Stop.of(lot, crops).stream().map(stop -> stopped(lot, stop)))
        .findFirst();
  }

  private static String stopped(Lot lot, Stop stop) {
    return "lot was '" + lot.code() + "' but it is stopped: " + String.join(" ", stop.sentences());
  }

  private static Optional<String> correction(
      Corrected corrected, List<Recorded> about, Set<String> crops, Instant now) {
    Entry instead = corrected.instead();
    List<Recorded> standing = Lots.standing(about);
    if (isUnread(corrected.entry(), standing)) {
      return unread(corrected.entry());
    }
    boolean fits =
        standing.stream()
            .anyMatch(
                r ->
                    r.id() == corrected.entry()
                        && r.entry().getClass() == instead.getClass()
                        && r.entry().subject().equals(instead.subject()));
    if (!fits) {
      return Optional.of(
          "entry was '"
              + corrected.entry()
              + "' but a correction must name an entry of the same kind about the same subject");
    }
    List<Recorded> others = standing.stream().filter(r -> r.id() != corrected.entry()).toList();
    return Places.refusal(instead, new Standing(others, crops))
        .or(() -> overdrawn(corrected, about, now));
  }

  private static Optional<String> takingBack(TakenBack back, List<Recorded> about) {
    List<Recorded> standing = Lots.standing(about);
    if (isUnread(back.entry(), standing)) {
      return unread(back.entry());
    }
    Optional<Recorded> target = standing.stream().filter(r -> r.id() == back.entry()).findFirst();
    if (target.isEmpty()) {
      return Optional.of(
          "entry was '"
              + back.entry()
              + "' but session "
              + back.session()
              + " has no such entry that still stands");
    }
    if (standing.stream().anyMatch(r -> r.entry() instanceof SessionClosed)) {
      return Optional.of(
          "session was '" + back.session() + "' but it is closed, and its codes have been opened");
    }
    boolean isPlan = target.get().entry() instanceof SessionPlanned;
    return isPlan && standing.size() > 1
        ? Optional.of(
            "entry was '"
                + back.entry()
                + "' but fruits were cooked or scored for session "
                + back.session()
                + "; take that back first")
        : Optional.empty();
  }

  private static Optional<String> withdrawal(
      Withdrawn withdrawn, List<Recorded> about, Instant now) {
    List<Recorded> standing = Lots.standing(about);
    if (isUnread(withdrawn.entry(), standing)) {
      return unread(withdrawn.entry());
    }
    Optional<Recorded> target =
        standing.stream().filter(r -> r.id() == withdrawn.entry()).findFirst();
    if (target.isEmpty()) {
      return Optional.of(
          "entry was '"
              + withdrawn.entry()
              + "' but lot "
              + withdrawn.lot()
              + " has no such entry that still stands");
    }
    boolean isFirst = target.get().entry() instanceof Harvested;
    if (isFirst && standing.stream().anyMatch(r -> r.id() > withdrawn.entry())) {
      return Optional.of(
          "entry was '"
              + withdrawn.entry()
              + "' but more was said of lot "
              + withdrawn.lot()
              + " since it came in: take that back first");
    }
    return overdrawn(withdrawn, about, now);
  }

  /** No lot may lose more fruits than it has, whatever was corrected. */
  private static Optional<String> overdrawn(Entry entry, List<Recorded> about, Instant now) {
    Entry said = entry instanceof Corrected corrected ? corrected.instead() : entry;
    if (!(said instanceof OfLot)) {
      return Optional.empty();
    }
    List<Recorded> after = new ArrayList<>(about);
    after.add(new Recorded(Long.MAX_VALUE, now, "", entry));
    return Lots.of(after)
        .find(entry.subject())
        .filter(lot -> lot.fruits().sound() < 0)
        .map(
            lot ->
                "count of lot "
                    + lot.code()
                    + " would fall to "
                    + lot.fruits().sound()
                    + " but no more fruits can go than came in ("
                    + lot.count()
                    + ")");
  }

  private static boolean isUnread(long id, List<Recorded> standing) {
    return standing.stream().anyMatch(r -> r.id() == id && r.entry() instanceof NewerEntry);
  }

  private static Optional<String> unread(long id) {
    return Optional.of(
        "entry was '"
            + id
            + "' but a newer version of this program said it, and only that version can change it");
  }
}
