package rindward.controller.lot;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Entry;
import rindward.controller.journal.FieldDay;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.MisfitAccepted;
import rindward.controller.journal.Moved;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Recounted;
import rindward.controller.journal.Reserved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Used;
import rindward.controller.journal.Weighed;

/**
 * Tells one lot from everything that stands about it, in the order in which it happened. What was
 * said late takes its place as if it had been said in time.
 */
final class LotStory {
  private final Harvested harvest;
  private final List<HarmFound> harms;
  private final List<NewerEntry> newer;
  private final List<Stay> stays = new ArrayList<>();
  private final List<Weighed> weighings = new ArrayList<>();
  private final List<Culled> culls = new ArrayList<>();
  private final List<Used> uses = new ArrayList<>();
  private final List<RipenessNoted> ripeness = new ArrayList<>();
  private final List<FrostNoted> frosts = new ArrayList<>();
  private final List<OffTypeNoted> offType = new ArrayList<>();
  private final List<Noted> notes = new ArrayList<>();
  private final List<KitchenTasted> tastes = new ArrayList<>();
  private final List<SampleCooked> cooked = new ArrayList<>();
  private final List<Missed> missed = new ArrayList<>();
  private final Set<String> acceptedPlaces = new HashSet<>();
  private Optional<Attested> attested = Optional.empty();
  private Optional<Instant> emptied = Optional.empty();
  private FruitBudget fruits;
  private String place;
  private Instant since;

  private LotStory(Harvested harvest, List<HarmFound> harms, List<NewerEntry> newer) {
    this.harvest = harvest;
    this.harms = harms;
    this.newer = newer;
    this.fruits = FruitBudget.of(harvest.count());
    this.place = harvest.place();
    this.since = harvest.at();
  }

  /** Tells the lot; empty while nothing has been harvested. */
  static Optional<Lot> tell(
      List<Recorded> standing, List<HarmFound> harms, List<NewerEntry> newer, long version) {
    return standing.stream()
        .map(Recorded::entry)
        .filter(Harvested.class::isInstance)
        .map(Harvested.class::cast)
        .findFirst()
        .map(
            harvest -> {
              LotStory story = new LotStory(harvest, harms, newer);
              List<Entry> told = new ArrayList<>(standing.size());
              standing.forEach(recorded -> told.add(recorded.entry()));
              told.sort(Comparator.comparing(Entry::at));
              told.forEach(entry -> Places.tell(entry, story));
              return story.lot(version);
            });
  }

  private Lot lot(long version) {
    stays.add(new Stay(place, since, Instant.MAX));
    PickedFruits picked = new PickedFruits(harvest.count(), weighings, tastes, cooked, harms);
    seen(picked);
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
        newer.stream().filter(n -> n.isAbout(harvest.lot(), place)).toList(),
        List.of(),
        attested,
        emptied,
        acceptedPlaces,
        version);
  }

  void moved(Moved entry) {
    if (entry.at().isBefore(harvest.at()) || entry.at().equals(harvest.at())) {
      return;
    }
    if (!entry.at().equals(since)) {
      stays.add(new Stay(place, since, entry.at()));
    }
    place = entry.place();
    since = entry.at();
  }

  void weighed(Weighed entry) {
    weighings.add(entry);
  }

  void culled(Culled entry) {
    counted(fruits.culled(entry.count()), entry.at());
    culls.add(entry);
  }

  void used(Used entry) {
    counted(fruits.usedFor(entry.purpose(), entry.count()), entry.at());
    uses.add(entry);
  }

  private void counted(FruitBudget now, Instant at) {
    fruits = now;
    emptied = now.sound() > 0 ? Optional.empty() : emptied.or(() -> Optional.of(at));
  }

  void recounted(Recounted entry) {
    missed.add(new Missed(fruits.sound() - entry.count(), entry.at()));
    counted(fruits.recounted(entry.count()), entry.at());
  }

  void reserved(Reserved entry) {
    fruits = fruits.reserved(entry.purpose(), entry.count());
  }

  void ripenessNoted(RipenessNoted entry) {
    ripeness.add(entry);
  }

  void frostNoted(FrostNoted entry) {
    frosts.add(entry);
  }

  void kitchenTasted(KitchenTasted entry) {
    tastes.add(entry);
  }

  /** A fruit cooked for a session tells of its lot too. */
  void cooked(SampleCooked entry) {
    cooked.add(entry);
  }

  /** Seeds seen in one more cut fruit are a sign seen in so many fruits, whoever looked. */
  private void seen(PickedFruits picked) {
    Map<Seeds, Integer> cut = new EnumMap<>(Seeds.class);
    for (Fruit fruit : picked.all()) {
      fruit
          .seeds()
          .ifPresent(
              seeds -> {
                int count = cut.merge(seeds, 1, Integer::sum);
                int low = seeds.sign().usual().orElseThrow().low();
                int high = seeds.sign().usual().orElseThrow().high();
                ripeness.add(
                    new RipenessNoted(
                        harvest.lot(), seeds.sign(), low, high, count, fruit.seedsSeenAt()));
              });
    }
    ripeness.sort(Comparator.comparing(RipenessNoted::at));
  }

  /** A day in the field becomes an age at picking; a first flower only bounds it. */
  void fieldDayNoted(FieldDayNoted entry) {
    LocalDate picked = LocalDate.ofInstant(harvest.at(), ZoneOffset.UTC);
    int age = (int) Math.max(0, ChronoUnit.DAYS.between(entry.day(), picked));
    int youngest = entry.what() == FieldDay.FRUIT_SET ? age : 0;
    ripeness.add(
        new RipenessNoted(
            harvest.lot(), entry.what().sign(), youngest, age, entry.fruits(), harvest.at()));
  }

  void offTypeNoted(OffTypeNoted entry) {
    offType.add(entry);
  }

  void noted(Noted entry) {
    notes.add(entry);
  }

  void attested(Attested entry) {
    attested = attested.or(() -> Optional.of(entry));
  }

  void misfitAccepted(MisfitAccepted entry) {
    acceptedPlaces.add(entry.place());
  }
}
