package rindward.controller.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.judge.LotJudge;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Room;
import rindward.controller.room.RoomPurpose;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.dashboard.lots.LikingView;
import rindward.dashboard.lots.LikingView.AgedView;
import rindward.dashboard.lots.LikingView.PointView;
import rindward.dashboard.lots.LotChange;
import rindward.dashboard.lots.LotLine;
import rindward.dashboard.lots.LotRefused;
import rindward.dashboard.lots.LotRefused.Why;
import rindward.dashboard.lots.LotView;
import rindward.dashboard.lots.SaidView;

/** What a phone says of lots, from the page's question to the disk and back. */
class LotPagesTest {
  private static final Instant START = Instant.parse("2026-09-20T08:00:00Z");

  @TempDir Path folder;
  private Database database;
  private SampleLog samples;
  private LotPages pages;
  private Instant now = START;
  private int requests;
  private final Deque<Runnable> later = new ArrayDeque<>();

  @BeforeEach
  void open() {
    database = new Database(folder.resolve("shed.sqlite"));
    samples = new SampleLog(database);
    pages = pages();
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void aHelperFindsHarm_andOnlyAnOwnerLiftsIt() throws LotRefused {
    bringIn("K4T", 9);
    Map<String, String> found = Map.of("found", "bitter");
    var unused = pages.say("kitchen-taste", List.of("K4T"), found, change());
    assertThat(pages.lot("K4T").orElseThrow().lot().verdict().state()).isEqualTo("stopped");

    Map<String, String> reason = Map.of("note", "it was a gourd");
    assertThatThrownBy(() -> pages.say("harm-lifted", List.of("K4T"), reason, change()))
        .hasMessage("kind was 'harm-lifted' but only the owner says that.");
    LotChange owner = new LotChange("Wren", true, "lift-it-now", Map.of(), null);
    var lifted = pages.say("harm-lifted", List.of("K4T"), reason, owner);
    assertThat(lifted.lots().get(0).verdict().state()).isNotEqualTo("stopped");
  }

  @Test
  void aSeasonOfOneLot_isSaidAndShown() throws LotRefused {
    bringIn("K4T", 46);
    pass(Duration.ofDays(15), 28_000, 78_000);
    say("moved", "K4T", Map.of("place", "storage"));
    say("weighed", "K4T", Map.of("fruit", "tag 1", "weight_g", "1450"));
    pass(Duration.ofDays(20), 12_000, 65_000);
    say("weighed", "K4T", Map.of("fruit", "tag 1", "weight_g", "1421"));
    SaidView culled = say("culled", "K4T", Map.of("count", "2", "cause", "soft"));
    say("reserved", "K4T", Map.of("count", "3", "purpose", "panel"));
    later.forEach(Runnable::run);

    assertThat(culled.lots().get(0).fruits().sound()).isEqualTo(44);
    LotView lot = pages.lot("k4t").orElseThrow();
    assertThat(lot.lot().fruits().free()).isEqualTo(41);
    assertThat(lot.lot().cure()).isNotNull();
    assertThat(lot.lot().cure().measured()).isEqualTo(1);
    assertThat(lot.lot().verdict().reasons()).anyMatch(r -> r.startsWith("Cured"));
    assertThat(lot.stays())
        .extracting(LotView.StayView::place)
        .containsExactly("curing", "storage");
    assertThat(lot.weights().get(0).points().get(1).lossPercent()).isEqualTo(2.0);
    assertThat(lot.survival().sentence()).contains("2 of 46 lost");
    assertThat(lot.story()).extracting(LotView.EntryView::kind).contains("harvested", "culled");
    assertThat(lot.accounts())
        .allSatisfy(
            a ->
                assertThat(a.inRange().measured() + a.outOfRangeHours() + a.unknownHours())
                    .isCloseTo(a.elapsedHours(), org.assertj.core.data.Offset.offset(0.02)));
  }

  @Test
  void theSameChangeSentAgain_isKeptOnceEvenAfterARestart() throws LotRefused {
    bringIn("K4T", 10);
    LotChange change = new LotChange("Wren", "request-of-a-phone", Map.of(), null);
    Map<String, String> one = Map.of("count", "1", "cause", "rot");
    SaidView first = pages.say("culled", List.of("K4T"), one, change);
    pages = pages();
    SaidView again = pages.say("culled", List.of("K4T"), one, change);
    assertThat(again.entries()).isEqualTo(first.entries());
    assertThat(again.lots().get(0).fruits().sound()).isEqualTo(9);
  }

  @Test
  void whoHasNotSeenTheLatest_isRefused_andNothingOfAGroupIsKept() throws LotRefused {
    bringIn("K4T", 10);
    bringIn("B1", 10);
    Map<String, Long> seen = Map.of("K4T", version("K4T"), "B1", version("B1"));
    say("noted", "B1", Map.of("note", "somebody was here"));
    assertThatThrownBy(
            () ->
                pages.say(
                    "moved",
                    List.of("K4T", "B1"),
                    Map.of("place", "porch"),
                    new LotChange("Rook", "request-1", seen, null)))
        .isInstanceOfSatisfying(
            LotRefused.class, refused -> assertThat(refused.why()).isEqualTo(Why.STALE))
        .hasMessageContaining("somebody else has changed B1 since");
    assertThat(line("K4T").place()).isEqualTo("curing");
  }

  @Test
  void aGroupThatMoved_comesBackWithOneUndo() throws LotRefused {
    bringIn("K4T", 10);
    bringIn("B1", 10);
    now = now.plusSeconds(60);
    SaidView moved = pages.say("moved", List.of("K4T", "B1"), Map.of("place", "porch"), change());
    assertThat(moved.warnings())
        .containsExactly("There is no probe in porch: the time there will be unknown.");
    SaidView back = pages.withdraw(moved.entries(), change());
    assertThat(back.lots()).extracting(LotLine::place).containsOnly("curing");
  }

  @Test
  void aCorrection_standsInForWhatWasWrong_andKeepsIt() throws LotRefused {
    bringIn("K4T", 10);
    long id = say("culled", "K4T", Map.of("count", "5", "cause", "rot")).entries().get(0);
    pages.correct(id, Map.of("count", "2"), change());
    LotView lot = pages.lot("K4T").orElseThrow();
    assertThat(lot.lot().fruits().sound()).isEqualTo(8);
    assertThat(lot.story().get(0).isCorrected()).isTrue();
    assertThatThrownBy(() -> pages.correct(999, Map.of("count", "2"), change()))
        .isInstanceOfSatisfying(
            LotRefused.class, refused -> assertThat(refused.why()).isEqualTo(Why.UNKNOWN));
  }

  @Test
  void whatCannotStand_isRefusedInASentence() throws LotRefused {
    bringIn("K4T", 3);
    assertThatThrownBy(() -> say("culled", "K4T", Map.of("count", "4", "cause", "rot")))
        .isInstanceOfSatisfying(
            LotRefused.class, refused -> assertThat(refused.why()).isEqualTo(Why.CONTRADICTED));
    assertThatThrownBy(() -> say("culled", "K4T", Map.of("count", "1", "cause", "gone")))
        .isInstanceOfSatisfying(
            LotRefused.class, refused -> assertThat(refused.why()).isEqualTo(Why.MALFORMED))
        .hasMessageStartingWith("cause was 'gone' but it must be one of rot, soft");
    assertThatThrownBy(() -> say("culled", "K4T", Map.of("couse", "rot")))
        .hasMessageContaining("did you mean 'cause'?");
    assertThatThrownBy(() -> say("painted", "K4T", Map.of()))
        .hasMessageStartingWith("kind was 'painted'");
  }

  @Test
  void whatHappenedInTheBarn_isKeptAtItsOwnTime() throws LotRefused {
    bringIn("K4T", 3);
    now = START.plus(Duration.ofDays(2));
    Instant then = now.minus(Duration.ofHours(3));
    pages.say(
        "moved",
        List.of("K4T"),
        Map.of("place", "storage"),
        new LotChange("Wren", "request-late", Map.of(), then));
    assertThat(pages.lot("K4T").orElseThrow().stays().get(1).from()).isEqualTo(then);
  }

  @Test
  void aNewHour_isAddedUpLater_andTheSameWhenEverythingIsForgotten() throws LotRefused {
    bringIn("K4T", 3);
    pass(Duration.ofDays(5), 28_000, 78_000);
    pages.forget();
    double before = line("K4T").cure().measured();
    pass(Duration.ofHours(5), 28_000, 78_000);
    assertThat(line("K4T").cure().measured()).as("nobody waits").isEqualTo(before);
    later.forEach(Runnable::run);
    LotLine added = line("K4T");
    assertThat(added.cure().measured()).isGreaterThan(before);
    pages.forget();
    assertThat(line("K4T")).isEqualTo(added);
  }

  @Test
  void aWeightThatGrew_isKeptWithAWarning() throws LotRefused {
    bringIn("K4T", 3);
    say("weighed", "K4T", Map.of("fruit", "a", "weight_g", "1000"));
    assertThat(say("weighed", "K4T", Map.of("fruit", "a", "weight_g", "1100")).warnings())
        .singleElement()
        .asString()
        .startsWith("This is heavier than last time (1000 g a fruit");
  }

  @Test
  void likingOfAVariety_isToldOverTheDaysItWasKept_ofEveryLotOfIt() throws LotRefused {
    for (String code : List.of("K4T", "K7A")) {
      Map<String, String> fields =
          Map.of(
              "crop",
              "kabocha",
              "variety",
              "Winterglut",
              "count",
              "9",
              "place",
              "porch",
              "grade",
              "ripe");
      SaidView unused = say("harvested", code, fields);
    }
    now = START.plus(Duration.ofDays(20));
    say("attested", "K4T", Map.of("note", "stem dry"));
    say("attested", "K7A", Map.of("note", "stem dry"));
    now = START.plus(Duration.ofDays(30));
    say("kitchen-taste", "K4T", Map.of("liking", "5"));
    now = START.plus(Duration.ofDays(70)).plus(Duration.ofHours(1));
    say("kitchen-taste", "K7A", Map.of("liking", "8"));

    LikingView liking = pages.lot("K4T").orElseThrow().liking();

    assertThat(liking.tastes())
        .extracting(AgedView::lot, AgedView::day, AgedView::liking)
        .containsExactly(tuple("K4T", 30, 5.0), tuple("K7A", 70, 8.0));
    assertThat(liking.curve().get(0)).isEqualTo(new PointView(30, 5));
    assertThat(liking.sentence()).contains("most on day 70 (8.0 of 9)");
  }

  @Test
  void aMoveToARoomThatDoesNotSuit_isToldOnce_andNoMoreOnceAccepted() throws LotRefused {
    bringIn("K4T", 3);
    pass(Duration.ofDays(15), 28_000, 78_000);
    say("attested", "K4T", Map.of("note", "stem dry"));
    say("moved", "K4T", Map.of("place", "storage"));
    SaidView back = say("moved", "K4T", Map.of("place", "curing"));
    assertThat(back.warnings()).singleElement().asString().startsWith("K4T  Kabocha");
    say("misfit-accepted", "K4T", Map.of("place", "curing"));
    say("moved", "K4T", Map.of("place", "storage"));
    assertThat(say("moved", "K4T", Map.of("place", "curing")).warnings()).isEmpty();
  }

  @Test
  void theListOffersCodesThatAreFree() throws LotRefused {
    List<String> free = pages.lots(false, 0, 10).freeCodes();
    assertThat(free).doesNotHaveDuplicates().hasSize(12);
    bringIn(free.get(0), 3);
    assertThat(pages.lots(false, 0, 10).freeCodes()).doesNotContain(free.get(0));
  }

  private LotPages pages() {
    CropGuide crops = CropGuideReader.builtIn();
    EntryService door = new EntryService(new Journal(database), crops);
    return new LotPages(
        List.of(
            room("curing", RoomPurpose.CURING, new Range(limits(27, 29), limits(75, 80))),
            room("storage", RoomPurpose.STORAGE, new Range(limits(10, 13), limits(50, 70)))),
        ZoneId.of("UTC"),
        crops,
        Duration.ofMinutes(20).toMillis(),
        door,
        new LotJudge(crops, 1_200_000, new SampleStore(database, samples)::history, door::journal),
        new SampleStore(database, samples)::history,
        later::add,
        () -> now);
  }

  private static Limits limits(int low, int high) {
    return new Limits(low * 1000, high * 1000);
  }

  private static Room room(String name, RoomPurpose purpose, Range range) {
    return new Room(name, purpose, range, Map.of(), new Accuracy(200, 2_000), 0, 0, true);
  }

  /** Time goes by in both rooms, measured every ten minutes. */
  private void pass(Duration time, int temperatureMilliC, int humidityMilliPct) {
    Instant end = now.plus(time);
    for (; now.isBefore(end); now = now.plus(Duration.ofMinutes(10))) {
      for (String room : List.of("curing", "storage")) {
        samples.sample(room, now.toEpochMilli(), temperatureMilliC, humidityMilliPct);
      }
    }
    samples.flush(now.toEpochMilli());
  }

  private void bringIn(String code, int count) throws LotRefused {
    Map<String, String> fields =
        Map.of("crop", "kabocha", "count", Integer.toString(count), "place", "curing");
    SaidView unused = say("harvested", code, fields);
  }

  private SaidView say(String kind, String code, Map<String, String> fields) throws LotRefused {
    now = now.plusSeconds(1);
    return pages.say(kind, List.of(code), fields, change());
  }

  private LotChange change() {
    return new LotChange("Wren", "request-" + ++requests, Map.of(), (@Nullable Instant) null);
  }

  private LotLine line(String code) {
    return pages.lots(true, 0, 10).lots().stream()
        .filter(lot -> lot.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  private long version(String code) {
    return line(code).version();
  }
}
