package rindward.controller.store.current;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rindward.controller.Any;
import rindward.controller.Seeded;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Noted;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Used;
import rindward.controller.journal.Withdrawn;
import rindward.controller.judge.JournalView;
import rindward.controller.judge.LotJudge;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Sessions;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.readiness.Verdict;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.store.Database;
import rindward.controller.store.EntryJson;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.store.OwnDatabase;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.controller.tasting.Attribute;

/** Control holds what is not over, and answers as if it held everything. */
class CurrentJournalTest {
  private static final CropGuide CROPS = CropGuideReader.builtIn();
  private static final Instant START = Instant.parse("2025-09-10T12:00:00Z");
  private static final long HOLD_MILLIS = Duration.ofHours(2).toMillis();

  @RegisterExtension final OwnDatabase own = new OwnDatabase();
  private Database database;
  private EntryService door;
  private CurrentJournal current;
  private Instant now = START;
  private int requests;
  private int airOfThePast;

  @BeforeEach
  void open() {
    database = own.database();
    door = new EntryService(new Journal(database), CROPS);
    current = new CurrentJournal(database, CROPS, "this program");
  }

  @Test
  void aLotThatIsEatenUp_isLetGo_andItsPlaceRemembered() {
    say(harvested("A1", "Moss"));
    say(harvested("A2", "Moss"));
    say(new AccuracyStated("storage", 300, 3_000, now));
    assertThat(subjects()).containsExactlyInAnyOrder("A1", "A2", "storage");

    say(new Used("A1", 4, Purpose.KITCHEN, later()));
    assertThat(subjects()).containsExactlyInAnyOrder("A2", "storage");
    assertThat(current.places()).containsExactly("storage");
  }

  @Test
  void aWordAboutALotThatIsOver_bringsItBack_evenAfterARestart() {
    say(harvested("A1", "Moss"));
    long last = say(new Used("A1", 4, Purpose.KITCHEN, later()));
    assertThat(subjects()).isEmpty();
    restart();
    assertThat(subjects()).isEmpty();

    say(new Withdrawn("A1", last, later()));
    assertThat(subjects()).containsExactly("A1");
    assertThat(Lots.of(current.entries()).find("A1").orElseThrow().fruits().sound()).isEqualTo(4);
  }

  @Test
  void whatWasSaidWhileControlWasDown_bringsBackToo() {
    say(harvested("A1", "Moss"));
    long last = say(new Used("A1", 4, Purpose.KITCHEN, later()));
    assertThat(subjects()).isEmpty();

    say(new Withdrawn("A1", last, later()));
    restart();

    assertThat(subjects()).containsExactly("A1");
  }

  /** Told in somebody's kitchen a year later: the lot is over, the finding is not. */
  @Test
  void aBitterCupOfALotThatIsOver_isHeard() {
    say(harvested("A1", "Moss"));
    say(harvested("A2", "Moss"));
    plan("one", "A1", "A2");
    say(new Used("A1", 4, Purpose.KITCHEN, later()));
    say(new Used("A2", 4, Purpose.KITCHEN, later()));
    assertThat(subjects()).as("tasting and all").isEmpty();
    restart();
    assertThat(subjects()).isEmpty();

    String cup = cupOf("A1");
    say(new Scored("one", "Wren", cup, Attribute.BITTER, 1, later()));

    assertThat(subjects()).containsExactlyInAnyOrder("A1", "session one");
    assertThat(Lots.of(current.entries()).find("A1").orElseThrow().harms()).hasSize(1);
  }

  @Test
  void aLotThatCameInWhileOthersWereLookedAt_isNotLetGoUnseen() {
    List<Recorded> told = current.entries();
    say(harvested("A1", "Moss"));
    current.settle(told, Lots.of(told));
    assertThat(subjects()).containsExactly("A1");
  }

  @Test
  void whatLotsTaught_isWorkedOutOnce_alsoOverARestart() throws Exception {
    twoSeasons();
    Map<String, Verdict> told = byCurrent();
    assertThat(told).isEqualTo(byAll());
    int reads = airOfThePast;
    assertThat(reads).isPositive();
    restart();
    assertThat(byCurrent()).isEqualTo(told);
    assertThat(airOfThePast).as("no air of what is over is read again").isEqualTo(reads);
  }

  @Test
  void allThatIsRemembered_mayBeDeleted_whileItRunsAndInBetween() throws Exception {
    twoSeasons();
    Map<String, Verdict> told = byCurrent();
    Set<String> subjects = Set.copyOf(subjects());

    forget("finished", "served", "finished_up_to");
    assertThat(byCurrent()).isEqualTo(told);
    forget("finished");
    assertThat(byCurrent()).isEqualTo(told);
    forget("finished_up_to");
    restart();
    assertThat(byCurrent()).isEqualTo(told);
    assertThat(subjects()).containsExactlyInAnyOrderElementsOf(subjects);
  }

  @Test
  void newAccuracies_areTaughtAnew() throws Exception {
    twoSeasons();
    assertThat(byCurrent()).isEqualTo(byAll());
    say(new AccuracyStated("storage", 2_000, 9_000, START.plus(Duration.ofDays(1))));
    assertThat(byCurrent()).isEqualTo(byAll());
  }

  /** Whatever is said in whatever order, with restarts in between. */
  @Seeded(cases = 8)
  void answersAsIfItHeldEverything(Any any) {
    for (int i = 0; i < 60; i++) {
      later();
      String lot = "A" + any.intBetween(1, 8);
      Optional<Lot> before = Lots.of(door.journal()).find(lot);
      if (before.isEmpty()) {
        say(harvested(lot, any.intBetween(0, 1) == 0 ? "Moss" : "Fern"));
      } else {
        sayOf(before.get(), any.intBetween(0, 4));
      }
      if (any.intBetween(0, 9) == 0) {
        restart();
      }
      if (any.intBetween(0, 2) == 0) {
        subjects();
        assertThat(holding(current.entries())).isEqualTo(holding(door.journal()));
      }
    }
  }

  private void sayOf(Lot lot, int what) {
    int sound = lot.fruits().sound();
    long first =
        door.journal().stream()
            .filter(r -> r.entry() instanceof Used used && used.lot().equals(lot.code()))
            .mapToLong(Recorded::id)
            .max()
            .orElse(0);
    if (what == 0
        && first > 0
        && Lots.standing(door.journal()).stream().anyMatch(r -> r.id() == first)) {
      say(new Withdrawn(lot.code(), first, now));
    } else if (what <= 2 && sound > 0) {
      say(new Used(lot.code(), what == 1 ? sound : 1, Purpose.KITCHEN, now));
    } else {
      say(new Noted(lot.code(), "looked at", now));
    }
  }

  private static List<Lot> holding(List<Recorded> journal) {
    return Lots.of(journal).all().stream().filter(lot -> lot.fruits().sound() > 0).toList();
  }

  /** Enough of one variety that its own life counts before the guide's. */
  private void twoSeasons() {
    SampleLog log = new SampleLog(database);
    for (int hour = 0; hour < 400 * 24; hour++) {
      log.sample("storage", START.plus(hour, ChronoUnit.HOURS).toEpochMilli(), 12_000, 65_000);
      if (hour % 24 == 23) {
        log.flush(START.plus(hour, ChronoUnit.HOURS).toEpochMilli());
      }
    }
    log.flush(START.plus(400, ChronoUnit.DAYS).toEpochMilli());
    for (int lot = 1; lot <= 4; lot++) {
      now = START;
      say(harvested("A" + lot, "Moss"));
      for (int fruit = 0; fruit < 4; fruit++) {
        now = START.plus(100 + 7L * lot + 10L * fruit, ChronoUnit.DAYS);
        say(new Culled("A" + lot, 1, Cause.ROT, "", now));
      }
    }
    now = START.plus(300, ChronoUnit.DAYS);
    say(harvested("B1", "Moss"));
    now = START.plus(395, ChronoUnit.DAYS);
    assertThat(subjects()).containsExactly("B1");
  }

  private LotJudge judge() {
    SampleStore samples = new SampleStore(database, new SampleLog(database));
    FinishedLots finished =
        new FinishedLots(
            database,
            CROPS,
            HOLD_MILLIS,
            place -> {
              airOfThePast++;
              return samples.history(place);
            },
            current,
            () -> now);
    return new LotJudge(CROPS, HOLD_MILLIS, samples::history, current::entries, finished);
  }

  private Map<String, Verdict> byCurrent() {
    LotJudge judge = judge();
    Map<String, Verdict> told = verdicts(judge);
    JournalView view = judge.told();
    current.settle(view.journal(), view.lots());
    return told;
  }

  private Map<String, Verdict> byAll() {
    SampleStore samples = new SampleStore(database, new SampleLog(database));
    return verdicts(new LotJudge(CROPS, HOLD_MILLIS, samples::history, door::journal));
  }

  private Map<String, Verdict> verdicts(LotJudge judge) {
    return judge.judge(now).holding().stream()
        .collect(Collectors.toMap(o -> o.lot().code(), Offer::verdict));
  }

  /** Lets go of what is over, and returns what is held. */
  private Set<String> subjects() {
    List<Recorded> told = current.entries();
    current.settle(told, Lots.of(told));
    return current.entries().stream()
        .map(recorded -> recorded.entry().subject())
        .collect(Collectors.toSet());
  }

  private void restart() {
    current = new CurrentJournal(database, CROPS, "this program");
  }

  private void forget(String... tables) {
    for (String table : tables) {
      database.write(
          connection -> {
            try (Statement sql = connection.createStatement()) {
              return sql.executeUpdate("DELETE FROM " + table);
            }
          });
    }
  }

  private String cupOf(String lot) {
    return Sessions.of(door.journal())
        .find("one")
        .orElseThrow()
        .plan()
        .sheets()
        .get(0)
        .cups()
        .stream()
        .filter(cup -> cup.sample().equals("of " + lot))
        .findFirst()
        .orElseThrow()
        .code();
  }

  private void plan(String name, String... lots) {
    StringBuilder samples = new StringBuilder();
    for (String lot : lots) {
      samples.append(samples.isEmpty() ? "" : ",");
      samples.append(
          "{'name':'of %s','lot':'%s','fruits':['%s-1']}"
              .formatted(lot, lot, lot)
              .replace('\'', '"'));
    }
    say(
        EntryJson.taken(
            "session " + name,
            now,
            ("{'kind':'session-planned','session':'" + name + "','samples':[").replace('\'', '"')
                + samples
                + ("],'panelists':['Wren','Ash'],'cupsPerFlight':6,'blinding':'FULL',"
                        + "'preparation':{'method':'baked','temperatureC':190,'cut':'cubes',"
                        + "'doneWhen':'soft','servedAtC':50,'part':'middle'},'seed':7,'at':'"
                        + later()
                        + "'}")
                    .replace('\'', '"')));
  }

  private Instant later() {
    now = now.plusSeconds(60);
    return now;
  }

  private Harvested harvested(String code, String variety) {
    return new Harvested(code, "kabocha", variety, 4, "storage", now);
  }

  private long say(Entry entry) {
    EntryService.Said said =
        door.say(entry, "Wren", "r" + requests++, OptionalLong.empty(), now.plusSeconds(1));
    assertThat(said.refusal()).isEmpty();
    return said.recorded().orElseThrow().id();
  }
}
