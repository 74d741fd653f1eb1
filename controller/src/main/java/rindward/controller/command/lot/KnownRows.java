package rindward.controller.command.lot;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rindward.controller.command.base.Farm;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Planted;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lots;

/**
 * What of a file is known already: a plot is known by its season and its name, whatever code its
 * lot was given; anything else by all that it says. So a file that is read twice adds nothing.
 */
final class KnownRows {
  private final Farm farm;
  private final ZoneId zone;
  private final Set<Entry> standing;

  KnownRows(Farm farm) {
    this.farm = farm;
    this.zone = farm.settings().zone();
    this.standing =
        Lots.standing(farm.journal()).stream().map(Recorded::entry).collect(Collectors.toSet());
  }

  /** Tells whether an entry of a file would add anything. */
  boolean isNew(Entry entry) {
    return !standing.contains(entry)
        && (!(entry instanceof Planted plan) || planned(plan).isEmpty());
  }

  /**
   * Returns why a plot cannot be planned so: it is planned otherwise already; nothing if it can.
   */
  Optional<String> contradiction(Entry entry) {
    return entry instanceof Planted plan
        ? planned(plan)
            .filter(before -> !isSame(plan, before))
            .map(
                before ->
                    "plot "
                        + plan.plot()
                        + " of "
                        + season(plan)
                        + " is planned already, otherwise, as lot "
                        + before.lot()
                        + ": correct that one with 'lot correct', or take it back with 'lot undo'")
        : Optional.empty();
  }

  private Optional<Planted> planned(Planted plan) {
    return farm.lots().plans().values().stream()
        .filter(before -> before.plot().equalsIgnoreCase(plan.plot()))
        .filter(before -> season(before) == season(plan))
        .findFirst();
  }

  /** A row without a code means the plot's own. */
  private static boolean isSame(Planted plan, Planted before) {
    Planted coded = plan.lot().isEmpty() ? plan.withLot(before.lot()) : plan;
    return coded.equals(before);
  }

  private int season(Planted plan) {
    @Nullable LocalDate day = plan.transplanted() == null ? plan.sown() : plan.transplanted();
    return day == null ? LocalDate.ofInstant(plan.at(), zone).getYear() : day.getYear();
  }
}
