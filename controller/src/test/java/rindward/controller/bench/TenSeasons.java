package rindward.controller.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Preparation;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.Used;
import rindward.controller.journal.Weighed;
import rindward.controller.ledger.Accuracies;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.LotAccount;
import rindward.controller.ledger.LotExposure;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Session;
import rindward.controller.lot.Sessions;
import rindward.controller.readiness.EatingOrder;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.store.EntryService;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.Sheet;
import rindward.controller.variety.Experience;
import rindward.controller.variety.Grown;
import rindward.controller.variety.Tasted;

/**
 * What a long memory costs: ten invented seasons of a thousand lots, a hundred thousand weighings
 * and as many scores. The lots lie in places without a probe; one in a measured room costs the
 * account of its samples besides, which stands in the other table.
 */
final class TenSeasons {
  private static final int SEASONS = 10;
  private static final int LOTS = 1_000;
  private static final int WEIGHINGS = 10;
  private static final int SESSIONS = 10;
  private static final int VARIETIES = 250;
  private static final int ROUNDS = 15;
  private static final int HOLD_MILLIS = 300_000;
  private static final List<String> TYPES = List.of("kabocha", "butternut", "hubbard", "delicata");
  private static final int ENTRIES_AT_ONCE = 10_000;

  private final CropGuide guide = CropGuideReader.builtIn();
  private final List<Recorded> journal = new ArrayList<>();
  private final Random random = new Random(7);
  private final Instant now;

  /**
   * @param now when they are looked at, 60 days after the last harvest
   * @param placeOf where the lots lie once they have cured, by their number in their season
   */
  TenSeasons(Instant now, IntFunction<String> placeOf) {
    this.now = now;
    Instant first = now.minus(Duration.ofDays(365L * (SEASONS - 1) + 60));
    say(new AccuracyStated("storage", 200, 2_000, first));
    for (int season = 0; season < SEASONS; season++) {
      Instant harvest = first.plus(Duration.ofDays(365L * season));
      for (int i = 0; i < LOTS; i++) {
        lot(code(season, i), i, harvest, placeOf.apply(i));
      }
      if (harvest.plus(Duration.ofDays(90)).isBefore(now)) {
        for (int i = 0; i < SESSIONS; i++) {
          session(season, i, harvest.plus(Duration.ofDays(90)));
        }
      }
    }
  }

  /** Prints the lines of the table. */
  static void print() {
    TenSeasons seasons = new TenSeasons(Instant.parse("2026-11-17T00:00:00Z"), lot -> "cellar");
    String what = String.format(Locale.ROOT, "%,d entries", seasons.journal.size());
    line("ten seasons, 10,000 lots (" + what + "): the journal told", seasons::tell);
    List<Offer> offers = seasons.list();
    line("every lot with its verdict, and what to eat first", seasons::list);
    Lots lots = Lots.of(seasons.journal);
    String last = offers.get(offers.size() - 1).lot().code();
    line(
        "one lot with its verdict, accuracies and sessions read anew",
        () -> seasons.one(lots, Accuracies.of(seasons.journal), seasons.sessions(), last));
    Accuracies accuracies = Accuracies.of(seasons.journal);
    List<Session> sessions = seasons.sessions();
    line(
        "the same with the journal told already, as the page has it until somebody says something",
        () -> seasons.one(lots, accuracies, sessions, last));
  }

  public static void main(String[] args) {
    print();
  }

  private static void line(String what, Supplier<?> work) {
    long[] nanos = new long[ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
      long begin = System.nanoTime();
      if (work.get() == null) {
        throw new IllegalStateException("nothing came of it");
      }
      nanos[i] = System.nanoTime() - begin;
    }
    long[] warm = Arrays.stream(nanos).skip(ROUNDS / 3).sorted().toArray();
    System.out.printf(Locale.ROOT, "| %s | %.1f ms |%n", what, warm[warm.length / 2] / 1e6);
  }

  /** Says all of it, as if it were imported. */
  void sayTo(EntryService door) {
    List<Entry> entries = journal.stream().map(Recorded::entry).toList();
    for (int from = 0; from < entries.size(); from += ENTRIES_AT_ONCE) {
      List<Entry> some = entries.subList(from, Math.min(entries.size(), from + ENTRIES_AT_ONCE));
      List<EntryService.Refused> refused = door.sayAll(some, "Wren", "seasons-" + from, now);
      if (!refused.isEmpty()) {
        throw new IllegalStateException(refused.get(0).sentence());
      }
    }
  }

  private Lots tell() {
    return Lots.of(journal);
  }

  private List<Offer> list() {
    Lots lots = Lots.of(journal);
    Accuracies accuracies = Accuracies.of(journal);
    List<Grown> grown = lots.all().stream().map(lot -> grown(lot, accuracies)).toList();
    Experience experience = Experience.of(grown, Tasted.byLot(sessions()));
    List<Offer> offers = grown.stream().map(g -> experience.judge(g, now)).toList();
    return EatingOrder.of(offers);
  }

  private Offer one(Lots lots, Accuracies accuracies, List<Session> sessions, String code) {
    Lot lot = lots.find(code).orElseThrow();
    List<Grown> own =
        lots.all().stream()
            .filter(l -> l.variety().equals(lot.variety()) && l.crop().equals(lot.crop()))
            .map(l -> grown(l, accuracies))
            .toList();
    Grown asked = own.stream().filter(g -> g.lot() == lot).findFirst().orElseThrow();
    return Experience.of(own, Tasted.byLot(sessions)).judge(asked, now);
  }

  private List<Session> sessions() {
    return List.copyOf(Sessions.of(journal).all());
  }

  private Grown grown(Lot lot, Accuracies accuracies) {
    Crop crop = guide.crop(lot.crop()).orElseThrow();
    List<Exposure> life = Exposure.of(lot, accuracies, place -> (from, to, visit) -> {}, now);
    LotAccount account = LotAccount.of(life, crop, HOLD_MILLIS);
    return new Grown(
        lot,
        crop,
        LotExposure.of(lot, crop, life, account, (from, to, visit) -> {}, HOLD_MILLIS, now));
  }

  private void lot(String code, int number, Instant harvest, String place) {
    String type = TYPES.get(number % TYPES.size());
    String variety = "Number " + number % VARIETIES;
    say(new Harvested(code, type, variety, 20, "porch", harvest, Grade.RIPE, 30_000, null));
    say(new Attested(code, "stem dry", harvest.plus(Duration.ofDays(12))));
    say(new Moved(code, place, harvest.plus(Duration.ofDays(14))));
    for (int i = 0; i < WEIGHINGS; i++) {
      Instant at = harvest.plus(Duration.ofDays(15 + 4L * i));
      say(new Weighed(code, "1", 1, 1_500 - 5 * i, 0, at));
    }
    say(new Culled(code, 2, Cause.ROT, "", harvest.plus(Duration.ofDays(40 + random.nextInt(10)))));
    if (harvest.plus(Duration.ofDays(200)).isBefore(now)) {
      for (int day : new int[] {90, 120, 150}) {
        Instant at = harvest.plus(Duration.ofDays(day + random.nextInt(25)));
        say(new Culled(code, 2, Cause.SOFT, "", at));
      }
      say(new Used(code, 12, Purpose.KITCHEN, harvest.plus(Duration.ofDays(180))));
    }
  }

  private void session(int season, int number, Instant at) {
    String name = "s" + season + "-" + number;
    List<Served> samples =
        IntStream.range(0, 8)
            .mapToObj(i -> code(season, number * 8 + i))
            .map(code -> new Served(code, code, List.of("1")))
            .toList();
    List<String> tasters = IntStream.range(0, 9).mapToObj(i -> "taster " + i).toList();
    SessionPlanned plan =
        new SessionPlanned(
            name,
            samples,
            tasters,
            null,
            null,
            null,
            8,
            Blinding.FULL,
            new Preparation("baked", 190, "", "", null, ""),
            random.nextLong(),
            at);
    say(plan);
    Session session =
        Sessions.of(List.of(new Recorded(1, at, "Wren", plan))).find(name).orElseThrow();
    for (Sheet sheet : session.plan().sheets()) {
      for (Cup cup : sheet.cups()) {
        for (Attribute attribute : Attribute.values()) {
          int value =
              attribute == Attribute.BITTER
                  ? 0
                  : attribute.scale().lowest()
                      + random.nextInt(
                          attribute.scale().highest() - attribute.scale().lowest() + 1);
          say(new Scored(name, sheet.panelist(), cup.code(), attribute, value, at));
        }
      }
    }
    say(new SessionClosed(name, false, at));
  }

  /** Returns the code of a lot of a season, the first being 0. */
  static String code(int season, int number) {
    return (char) ('A' + season) + String.valueOf(number);
  }

  private void say(Entry entry) {
    journal.add(new Recorded(journal.size() + 1L, entry.at(), "Wren", entry));
  }
}
