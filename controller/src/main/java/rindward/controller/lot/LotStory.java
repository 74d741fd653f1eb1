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
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.AlarmAnswered;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryVisitor;
import rindward.controller.journal.FieldDay;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.MisfitAccepted;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.Planted;
import rindward.controller.journal.ProbeCalibrated;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Recounted;
import rindward.controller.journal.Reserved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RoomAsked;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Tasting;
import rindward.controller.journal.Used;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.journal.Weighed;
import rindward.controller.journal.Withdrawn;
import rindward.controller.journal.WorkAnnounced;

/**
 * Tells one lot from everything that stands about it, in the order in which it happened. What was
 * said late takes its place as if it had been said in time. Each visit tells whether the lot is
 * another one by it.
 */
final class LotStory implements EntryVisitor<Boolean> {
  private final Harvested harvest;
  private final List<HarmFound> harms;
  private final List<Stay> stays = new ArrayList<>();
  private final List<Weighed> weighings = new ArrayList<>();
  private final List<Culled> culls = new ArrayList<>();
  private final List<Used> uses = new ArrayList<>();
  private final List<RipenessNoted> ripeness = new ArrayList<>();
  private final List<FrostNoted> frosts = new ArrayList<>();
  private final List<OffTypeNoted> offType = new ArrayList<>();
  private final List<Noted> notes = new ArrayList<>();
  private final List<KitchenTasted> tastes = new ArrayList<>();
  private final List<Missed> missed = new ArrayList<>();
  private final Map<Seeds, Integer> cut = new EnumMap<>(Seeds.class);
  private final Set<String> acceptedPlaces = new HashSet<>();
  private Optional<Attested> attested = Optional.empty();
  private Optional<Instant> emptied = Optional.empty();
  private FruitBudget fruits;
  private String place;
  private Instant since;

  private LotStory(Harvested harvest, List<HarmFound> harms) {
    this.harvest = harvest;
    this.harms = harms;
    this.fruits = FruitBudget.of(harvest.count());
    this.place = harvest.place();
    this.since = harvest.at();
  }

  /** Tells the lot; empty while nothing has been harvested. */
  static Optional<Lot> tell(List<Recorded> standing, List<HarmFound> harms, long version) {
    return standing.stream()
        .map(Recorded::entry)
        .filter(Harvested.class::isInstance)
        .map(Harvested.class::cast)
        .findFirst()
        .map(
            harvest -> {
              LotStory story = new LotStory(harvest, harms);
              List<Entry> told = new ArrayList<>(standing.size());
              standing.forEach(recorded -> told.add(recorded.entry()));
              told.sort(Comparator.comparing(Entry::at));
              told.forEach(entry -> entry.accept(story));
              return story.lot(version);
            });
  }

  private Lot lot(long version) {
    stays.add(new Stay(place, since, Instant.MAX));
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
        missed,
        harms,
        attested,
        emptied,
        acceptedPlaces,
        version);
  }

  @Override
  public Boolean moved(Moved entry) {
    if (entry.at().isBefore(harvest.at()) || entry.at().equals(harvest.at())) {
      return false;
    }
    if (!entry.at().equals(since)) {
      stays.add(new Stay(place, since, entry.at()));
    }
    place = entry.place();
    since = entry.at();
    return true;
  }

  @Override
  public Boolean weighed(Weighed entry) {
    return weighings.add(entry);
  }

  @Override
  public Boolean culled(Culled entry) {
    counted(fruits.culled(entry.count()), entry.at());
    return culls.add(entry);
  }

  @Override
  public Boolean used(Used entry) {
    counted(fruits.usedFor(entry.purpose(), entry.count()), entry.at());
    return uses.add(entry);
  }

  private void counted(FruitBudget now, Instant at) {
    fruits = now;
    emptied = now.sound() > 0 ? Optional.empty() : emptied.or(() -> Optional.of(at));
  }

  @Override
  public Boolean recounted(Recounted entry) {
    missed.add(new Missed(fruits.sound() - entry.count(), entry.at()));
    counted(fruits.recounted(entry.count()), entry.at());
    return true;
  }

  @Override
  public Boolean reserved(Reserved entry) {
    fruits = fruits.reserved(entry.purpose(), entry.count());
    return true;
  }

  @Override
  public Boolean ripenessNoted(RipenessNoted entry) {
    return ripeness.add(entry);
  }

  @Override
  public Boolean frostNoted(FrostNoted entry) {
    return frosts.add(entry);
  }

  @Override
  public Boolean kitchenTasted(KitchenTasted entry) {
    seen(entry.cut().seeds(), entry.at());
    return tastes.add(entry);
  }

  /** A fruit cooked for a session tells of its lot too. */
  @Override
  public Boolean tasting(Tasting entry) {
    if (entry instanceof SampleCooked cooked) {
      seen(cooked.cut().seeds(), cooked.at());
    }
    return false;
  }

  /** Seeds seen in one more cut fruit are a sign seen in so many fruits. */
  private void seen(@Nullable Seeds seeds, Instant at) {
    if (seeds != null) {
      int count = cut.merge(seeds, 1, Integer::sum);
      int low = seeds.sign().usual().orElseThrow().low();
      int high = seeds.sign().usual().orElseThrow().high();
      ripeness.add(new RipenessNoted(harvest.lot(), seeds.sign(), low, high, count, at));
    }
  }

  /** A day in the field becomes an age at picking; a first flower only bounds it. */
  @Override
  public Boolean fieldDayNoted(FieldDayNoted entry) {
    LocalDate picked = LocalDate.ofInstant(harvest.at(), ZoneOffset.UTC);
    int age = (int) Math.max(0, ChronoUnit.DAYS.between(entry.day(), picked));
    int youngest = entry.what() == FieldDay.FRUIT_SET ? age : 0;
    return ripeness.add(
        new RipenessNoted(
            harvest.lot(), entry.what().sign(), youngest, age, entry.fruits(), harvest.at()));
  }

  @Override
  public Boolean offTypeNoted(OffTypeNoted entry) {
    return offType.add(entry);
  }

  @Override
  public Boolean noted(Noted entry) {
    return notes.add(entry);
  }

  @Override
  public Boolean attested(Attested entry) {
    attested = attested.or(() -> Optional.of(entry));
    return true;
  }

  @Override
  public Boolean misfitAccepted(MisfitAccepted entry) {
    return acceptedPlaces.add(entry.place());
  }

  @Override
  public Boolean planted(Planted entry) {
    return false;
  }

  @Override
  public Boolean harvested(Harvested entry) {
    return false;
  }

  @Override
  public Boolean withdrawn(Withdrawn entry) {
    return false;
  }

  @Override
  public Boolean accuracyStated(AccuracyStated entry) {
    return false;
  }

  @Override
  public Boolean roomAsked(RoomAsked entry) {
    return false;
  }

  @Override
  public Boolean outputTried(OutputTried entry) {
    return false;
  }

  @Override
  public Boolean alarmAnswered(AlarmAnswered entry) {
    return false;
  }

  @Override
  public Boolean workAnnounced(WorkAnnounced entry) {
    return false;
  }

  @Override
  public Boolean probeCalibrated(ProbeCalibrated entry) {
    return false;
  }

  @Override
  public Boolean corrected(Corrected entry) {
    return false;
  }

  @Override
  public Boolean varietyDecided(VarietyDecided entry) {
    return false;
  }
}
