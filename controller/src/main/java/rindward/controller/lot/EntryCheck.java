package rindward.controller.lot;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import rindward.controller.crop.Nearest;
import rindward.controller.lot.Entry.AccuracyStated;
import rindward.controller.lot.Entry.Corrected;
import rindward.controller.lot.Entry.Harvested;
import rindward.controller.lot.Entry.Moved;

/** Whether an entry can stand beside what was said before. Each refusal is one sentence. */
public final class EntryCheck {
  private static final Pattern CODE = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,11}");

  /** A watch may be a little ahead of the board's. */
  private static final Duration CLOCK_DIFFERENCE = Duration.ofMinutes(5);

  private EntryCheck() {}

  /**
   * Returns why the entry cannot be taken, or nothing.
   *
   * @param journal everything said so far
   * @param crops keys of the crop guide
   * @param now the time it is said
   */
  public static Optional<String> refusal(
      Entry entry, List<Recorded> journal, Set<String> crops, Instant now) {
    Lots lots = Lots.of(journal);
    if (entry.at().isAfter(now.plus(CLOCK_DIFFERENCE))) {
      return Optional.of(
          "at was '" + entry.at() + "' but it must not lie in the future (now " + now + ")");
    }
    if (entry instanceof Harvested harvested) {
      return lots.find(harvested.lot()).isPresent()
          ? Optional.of("lot was '" + harvested.lot() + "' but a lot of that code exists already")
          : harvest(harvested, crops);
    }
    if (entry instanceof Moved moved) {
      return move(moved, lots);
    }
    if (entry instanceof Corrected corrected) {
      return correction(corrected, journal, lots, crops);
    }
    if (entry instanceof AccuracyStated) {
      return Optional.empty();
    }
    throw new IllegalArgumentException("unknown kind of entry: " + entry);
  }

  private static Optional<String> harvest(Harvested harvested, Set<String> crops) {
    if (!CODE.matcher(harvested.lot()).matches()) {
      return Optional.of(
          "lot was '"
              + harvested.lot()
              + "' but it must be 1 to 12 capital letters, digits or hyphens");
    }
    if (!crops.contains(harvested.crop())) {
      return Optional.of(
          "crop was '"
              + harvested.crop()
              + "' but the crop guide has no type of that name"
              + Nearest.to(harvested.crop(), crops)
                  .map(near -> "; did you mean '" + near + "'?")
                  .orElse(""));
    }
    if (harvested.count() < 1) {
      return Optional.of("count was '" + harvested.count() + "' but it must be at least 1");
    }
    return place(harvested.place());
  }

  private static Optional<String> move(Moved moved, Lots lots) {
    Optional<Lot> lot = lots.find(moved.lot());
    if (lot.isEmpty()) {
      return Optional.of("lot was '" + moved.lot() + "' but there is no lot of that code");
    }
    if (!moved.at().isAfter(lot.get().harvestedAt())) {
      return Optional.of(
          "at was '"
              + moved.at()
              + "' but lot "
              + moved.lot()
              + " was harvested only at "
              + lot.get().harvestedAt());
    }
    return place(moved.place());
  }

  private static Optional<String> correction(
      Corrected corrected, List<Recorded> journal, Lots lots, Set<String> crops) {
    Entry instead = corrected.instead();
    boolean fits =
        Lots.standing(journal).stream()
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
    if (instead instanceof Harvested harvested) {
      return harvest(harvested, crops);
    }
    return instead instanceof Moved moved ? move(moved, lots) : Optional.empty();
  }

  private static Optional<String> place(String place) {
    return place.isBlank()
        ? Optional.of("place was empty but it must name a room or another place")
        : Optional.empty();
  }
}
