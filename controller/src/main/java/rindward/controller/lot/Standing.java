package rindward.controller.lot;

import static rindward.controller.journal.FieldErrors.wrong;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Nearest;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.Planted;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Recorded;

/**
 * What stands of a subject without the entry that is asked about, and why that entry cannot stand
 * beside it; nothing when it can. What a field may hold at all is not asked here. What nothing asks
 * for is not told. For one thread.
 */
final class Standing {
  private final List<Recorded> about;
  private final Set<String> crops;
  private @Nullable Lots lots;
  private @Nullable Sessions sessions;

  /**
   * @param about everything else that was said of the same subject
   */
  Standing(List<Recorded> about, Set<String> crops) {
    this.about = about;
    this.crops = crops;
  }

  /** Returns the sessions among it. */
  Sessions sessions() {
    Sessions told = sessions;
    if (told == null) {
      told = Sessions.of(about);
      sessions = told;
    }
    return told;
  }

  private Lots lots() {
    Lots told = lots;
    if (told == null) {
      told = Lots.of(about);
      lots = told;
    }
    return told;
  }

  /** A plan's code is taken by no lot and no other plan. */
  Optional<String> isNew(Planted entry) {
    return lots().codes().contains(entry.lot())
        ? wrong("lot", entry.lot(), "a lot of that code exists already or is planned")
        : Optional.empty();
  }

  /** A lot comes in once, and as what it was planned. */
  Optional<String> canComeIn(Harvested entry) {
    if (lots().find(entry.lot()).isPresent()) {
      return wrong("lot", entry.lot(), "a lot of that code exists already");
    }
    Planted plan = lots().plans().get(entry.lot());
    return plan != null && !plan.crop().equals(entry.crop())
        ? wrong("crop", entry.crop(), "plot " + plan.plot() + " was planned as " + plan.crop())
        : Optional.empty();
  }

  /** A lot is in one place at a time, and in none before it is picked. */
  Optional<String> canMove(Moved entry) {
    Optional<Lot> lot = lots().find(entry.lot());
    if (lot.isPresent() && !entry.at().isAfter(lot.get().harvestedAt())) {
      return before(entry, lot.get());
    }
    Optional<Stay> elsewhere =
        lot.stream()
            .flatMap(l -> l.stays().stream())
            .filter(s -> s.from().equals(entry.at()) && !s.place().equals(entry.place()))
            .findFirst();
    if (elsewhere.isPresent()) {
      return wrong(
          "place",
          entry.place(),
          "lot "
              + entry.lot()
              + " went to "
              + elsewhere.get().place()
              + " at that very moment; undo or correct that move first");
    }
    return isThere(entry);
  }

  /** A day in the field is written down before the fruit is picked. */
  Optional<String> isBeforeHarvest(FieldDayNoted entry) {
    return lots()
        .find(entry.lot())
        .map(lot -> LocalDate.ofInstant(lot.harvestedAt(), ZoneOffset.UTC))
        .filter(picked -> entry.day().isAfter(picked.plusDays(1)))
        .flatMap(picked -> wrong("day", entry.day(), "it was picked on " + picked));
  }

  /** The lot is there, and was at that time. */
  Optional<String> isHarvested(OfLot entry) {
    return lots()
        .find(entry.lot())
        .filter(lot -> entry.at().isBefore(lot.harvestedAt()))
        .map(lot -> before(entry, lot))
        .orElseGet(() -> isThere(entry));
  }

  /** The lot is there. */
  Optional<String> isThere(OfLot entry) {
    return lots().find(entry.lot()).isPresent()
        ? Optional.empty()
        : wrong(
            "lot",
            entry.lot(),
            lots().plans().containsKey(entry.lot())
                ? "it is only planned: bring it in first with 'lot add'"
                : "there is no lot of that code");
  }

  /** Some things are said before there is a fruit, of what is only planned. */
  Optional<String> isThereOrPlanned(OfLot entry) {
    return lots().plans().containsKey(entry.lot()) ? Optional.empty() : isThere(entry);
  }

  /** The lot has so many sound fruits. */
  Optional<String> hasFruits(String code, int count) {
    int sound = lots().find(code).map(lot -> lot.fruits().sound()).orElse(0);
    return count <= sound
        ? Optional.empty()
        : wrong(
            "count", count, "lot " + code + " has " + sound + (sound == 1 ? " fruit" : " fruits"));
  }

  /** So many of its fruits may go to that purpose. */
  Optional<String> hasFruitsFor(String code, Purpose purpose, int count) {
    return hasFruits(code, count)
        .or(() -> lots().find(code).flatMap(lot -> lot.fruits().refusal(code, purpose, count)));
  }

  /** The crop guide has that type. */
  Optional<String> isInGuide(String crop) {
    return crops.contains(crop)
        ? Optional.empty()
        : wrong(
            "crop",
            crop,
            "the crop guide has no type of that name"
                + Nearest.to(crop, crops).map(near -> "; did you mean '" + near + "'?").orElse(""));
  }

  private static Optional<String> before(OfLot entry, Lot lot) {
    return wrong(
        "at", entry.at(), "lot " + lot.code() + " was harvested only at " + lot.harvestedAt());
  }
}
