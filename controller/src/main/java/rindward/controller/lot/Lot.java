package rindward.controller.lot;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Culled;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.Used;
import rindward.controller.journal.Weighed;

/**
 * Some fruits that are treated as one: what was said at harvest, and what has been said since.
 * Every list is in the order in which things happened.
 *
 * @param harvest how it came in
 * @param stays where it has been since, in time order and without gaps; the last one is open
 * @param fruits where its fruits are
 * @param offType said if its fruits are not what their label says
 * @param picked its fruits that somebody picked out, each with what was said of it
 * @param missed what every recount missed, or found
 * @param harms what was found in its fruits that may make people ill, as it was said
 * @param unread what a newer version of this program may have said of it
 * @param harmsOfSisters what was found in lots of the same seed or plot
 * @param attested the first time somebody said it was cured by eye
 * @param emptied when its last fruit was gone; empty while one is left
 * @param acceptedPlaces places it does not suit and is meant to be in all the same
 * @param version id of the last entry about it: what a change to it must name
 */
public record Lot(
    Harvested harvest,
    List<Stay> stays,
    FruitBudget fruits,
    List<Weighed> weighings,
    List<Culled> culls,
    List<Used> uses,
    List<RipenessNoted> ripeness,
    List<FrostNoted> frosts,
    List<OffTypeNoted> offType,
    List<Noted> notes,
    List<KitchenTasted> tastes,
    PickedFruits picked,
    List<Missed> missed,
    List<HarmFound> harms,
    List<NewerEntry> unread,
    List<HarmFound> harmsOfSisters,
    Optional<Attested> attested,
    Optional<Instant> emptied,
    Set<String> acceptedPlaces,
    long version) {

  public Lot {
    stays = List.copyOf(stays);
    weighings = List.copyOf(weighings);
    culls = List.copyOf(culls);
    uses = List.copyOf(uses);
    ripeness = List.copyOf(ripeness);
    frosts = List.copyOf(frosts);
    offType = List.copyOf(offType);
    notes = List.copyOf(notes);
    tastes = List.copyOf(tastes);
    missed = List.copyOf(missed);
    harms = List.copyOf(harms);
    unread = List.copyOf(unread);
    harmsOfSisters = List.copyOf(harmsOfSisters);
    acceptedPlaces = Set.copyOf(acceptedPlaces);
  }

  /** Returns the same lot beside sisters in which something was found. */
  Lot beside(List<HarmFound> found) {
    return new Lot(
        harvest,
        stays,
        fruits,
        weighings,
        culls,
        uses,
        ripeness,
        frosts,
        offType,
        notes,
        tastes,
        picked,
        missed,
        harms,
        unread,
        found,
        attested,
        emptied,
        acceptedPlaces,
        version);
  }

  /** Returns its code, short enough for a paint pen. */
  public String code() {
    return harvest.lot();
  }

  /** Returns the key of its type in the crop guide. */
  public String crop() {
    return harvest.crop();
  }

  /** Returns the grower's name for the variety; may be empty. */
  public String variety() {
    return harvest.variety();
  }

  /** Returns how many fruits, bulbs or roots came in. */
  public int count() {
    return harvest.count();
  }

  /** Returns when it came in. */
  public Instant harvestedAt() {
    return harvest.at();
  }

  /** Returns how ripe it looked; null if nobody said. */
  public @Nullable Grade grade() {
    return harvest.grade();
  }

  /** Returns where the lot is now. */
  public String place() {
    return stays.get(stays.size() - 1).place();
  }

  /**
   * Returns the mean weight of a fruit in grams as it was last known: from crates on a scale, or
   * else from the weight at harvest, or else from the last tagged fruit.
   */
  public Optional<Integer> fruitGrams() {
    for (int i = weighings.size() - 1; i >= 0; i--) {
      Weighed weighed = weighings.get(i);
      if (weighed.fruit() == null) {
        return Optional.of(weighed.netGrams() / weighed.count());
      }
    }
    Integer atHarvest = harvest.weightGrams();
    if (atHarvest != null) {
      return Optional.of(atHarvest / count());
    }
    return weighings.isEmpty()
        ? Optional.empty()
        : Optional.of(weighings.get(weighings.size() - 1).netGrams());
  }
}
