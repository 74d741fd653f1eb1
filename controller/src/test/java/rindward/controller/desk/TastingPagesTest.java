package rindward.controller.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.crop.CropGuide;
import rindward.controller.judge.LotJudge;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.dashboard.lots.LotChange;
import rindward.dashboard.lots.LotRefused;
import rindward.dashboard.request.Page;
import rindward.dashboard.tastings.CookedRequest;
import rindward.dashboard.tastings.CupRequest;
import rindward.dashboard.tastings.EndRequest;
import rindward.dashboard.tastings.KitchenView;
import rindward.dashboard.tastings.KitchenView.CookedView;
import rindward.dashboard.tastings.KitchenView.FilledView;
import rindward.dashboard.tastings.PlanRequest;
import rindward.dashboard.tastings.PlanRequest.SampleRequest;
import rindward.dashboard.tastings.SheetView;
import rindward.dashboard.tastings.TastingRefused;
import rindward.dashboard.tastings.TastingRefused.Why;
import rindward.dashboard.tastings.TastingView;
import rindward.dashboard.varieties.DecisionRefused;
import rindward.dashboard.varieties.DecisionRequest;
import rindward.dashboard.varieties.VarietiesView.VarietyView;

/** A tasting from the page's plan to its result, and what is decided of its varieties. */
class TastingPagesTest {
  private static final EndRequest AS_PLANNED = new EndRequest("as-planned");

  private static final Page ALL = new Page(0, 100);
  private static final List<String> TASTERS = List.of("Wren", "Ash", "Rowan", "Linden");
  private static final Map<String, Integer> LIKING = Map.of("K4T", 8, "B1", 5);

  @TempDir Path folder;
  private final Instant now = Instant.parse("2026-12-20T18:00:00Z");
  private Database database;
  private LotPages lots;
  private TastingPages pages;
  private VarietyPages varieties;
  private int requests;

  @BeforeEach
  void open() throws LotRefused {
    database = new Database(folder.resolve("shed.sqlite"));
    CropGuide crops = CropGuideReader.builtIn();
    EntryService door = new EntryService(new Journal(database), crops);
    ZoneId zone = ZoneId.of("UTC");
    lots =
        new LotPages(
            List.of(),
            zone,
            crops,
            Duration.ofMinutes(20).toMillis(),
            door,
            new LotJudge(
                crops,
                1_200_000,
                new SampleStore(database, new SampleLog(database))::history,
                door::journal),
            new SampleStore(database, new SampleLog(database))::history,
            Runnable::run,
            () -> now);
    pages = new TastingPages(zone, crops, door, lots, () -> now);
    varieties = new VarietyPages(zone, crops, door, lots, () -> now);
    for (Map.Entry<String, String> lot : Map.of("K4T", "Winterglut", "B1", "Late Meg").entrySet()) {
      LotChange change = new LotChange("Wren", request(), Map.of(), now.minus(Duration.ofDays(80)));
      Map<String, String> harvest =
          Map.of("crop", "kabocha", "variety", lot.getValue(), "count", "9", "place", "porch");
      var unused = lots.say("harvested", List.of(lot.getKey()), harvest, change);
    }
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void tasting_isPlannedScoredByLinksClosedAndJudged() throws TastingRefused {
    plan("solstice");
    scoreEverything("solstice");
    assertThat(pages.tastings(ALL).tastings().get(0).scored()).isEqualTo(8);
    assertThat(pages.tasting("solstice").orElseThrow().result()).isNull();

    TastingView closed = pages.close("solstice", AS_PLANNED, "Wren", request());
    assertThat(closed.result()).isNotNull();
    assertThat(closed.result().samples()).extracting("variety").contains("Winterglut", "Late Meg");
    assertThat(closed.result().questions().get(0).goes().get(0).means())
        .extracting("sample", "mean")
        .containsExactlyInAnyOrder(tuple("K4T", 8.0), tuple("B1", 5.0));
    assertThat(closed.result().questions().get(0).goes().get(0).conclusions()).isNotEmpty();
  }

  @Test
  void beforeItIsClosed_onlyTheKitchenTellsWhatIsInACup() throws TastingRefused {
    plan("solstice");
    String shown =
        pages.tastings(ALL)
            + pages.tasting("solstice").toString()
            + pages.sheet(secret("solstice", "Ash"));
    assertThat(shown).contains("Ash").doesNotContain("K4T", "B1", "Winterglut", "Late Meg");
    assertThat(pages.kitchen("solstice").orElseThrow().toString()).contains("K4T", "Late Meg");
  }

  @Test
  void everyTaster_hasAnotherLink_whichIsOfThisTastingOnly() throws TastingRefused {
    plan("solstice");
    plan("twelfth night");
    List<String> links =
        List.of("solstice", "twelfth night").stream()
            .flatMap(name -> pages.kitchen(name).orElseThrow().trays().stream())
            .map(KitchenView.TrayView::link)
            .toList();
    assertThat(links).doesNotHaveDuplicates().hasSize(8).allMatch(l -> l.length() == 7 + 22);
    assertThat(pages.sheet(secret("solstice", "Ash")).orElseThrow().taster()).isEqualTo("Ash");
    assertThat(pages.sheet("AAAAAAAAAAAAAAAAAAAAAA")).isEmpty();
  }

  @Test
  void sameScoreSentAgain_isKeptOnce_andALaterOneCounts() throws TastingRefused {
    plan("solstice");
    String secret = secret("solstice", "Ash");
    String code = pages.sheet(secret).orElseThrow().cups().get(0).code();
    pages.score(secret, cup(code, 6), "key-1", now);
    pages.score(secret, cup(code, 7), "key-2", now);
    SheetView sheet = pages.score(secret, cup(code, 6), "key-1", now);
    assertThat(sheet.cups().get(0).answers()).containsEntry("liking", 7);
  }

  @Test
  void bitterFood_isStoppedOnEverySheet() throws TastingRefused {
    plan("solstice");
    KitchenView kitchen = pages.kitchen("solstice").orElseThrow();
    FilledView found = kitchen.trays().get(1).cups().get(0);
    pages.score(
        secret("solstice", "Ash"),
        new CupRequest(found.code(), Map.of("bitter", 1), null, null),
        request(),
        now);
    assertThat(pages.kitchen("solstice").orElseThrow().bitter()).containsExactly(found.sample());
    Map<String, String> inCup =
        kitchen.trays().get(2).cups().stream()
            .collect(Collectors.toMap(FilledView::code, FilledView::sample));
    assertThat(pages.sheet(secret("solstice", "Rowan")).orElseThrow().cups())
        .allSatisfy(
            cup ->
                assertThat(cup.stopped()).isEqualTo(inCup.get(cup.code()).equals(found.sample())));
    assertThat(pages.tasting("solstice").orElseThrow().tasting().scored())
        .as("who watches the count while ticking learns nothing of the other cups")
        .isEqualTo(1);
  }

  @Test
  void cookedFruit_isNotedOnce_andLeavesItsLot() throws TastingRefused {
    plan("solstice");
    CookedRequest note =
        new CookedRequest("K4T", null, 1400, 45, 38, "full", null, true, null, "tender", null);
    KitchenView kitchen = pages.cooked("solstice", note, "Wren", "a-note");
    assertThat(kitchen.pots().get(0).cooked())
        .containsExactly(
            new CookedView("1", 1400, 45, 38, "full", "", true, false, List.of(), "tender"));
    assertThat(lots.lot("K4T").orElseThrow().lot().fruits().sound()).isEqualTo(8);
    assertThat(pages.cooked("solstice", note, "Wren", "again")).isEqualTo(kitchen);
    CookedRequest other =
        new CookedRequest("K4T", "1", 1300, null, null, null, null, null, null, null, null);
    assertThatThrownBy(() -> pages.cooked("solstice", other, "Wren", "another"))
        .hasMessage("fruit was '1' but it is noted as cooked for K4T already.");
    CookedRequest odd =
        new CookedRequest("B1", null, null, null, null, "blue", null, null, null, null, null);
    assertThatThrownBy(() -> pages.cooked("solstice", odd, "Wren", "odd"))
        .hasMessage("seeds was 'blue' but it must be full or flat.");
  }

  @Test
  void cookedFruit_isTakenBack_andLiesInItsLotAgain() throws TastingRefused {
    plan("solstice");
    CookedRequest note =
        new CookedRequest("K4T", null, 1400, 45, 38, "full", null, true, null, "tender", null);
    pages.cooked("solstice", note, "Wren", "a-note");
    int left = lots.lot("K4T").orElseThrow().lot().fruits().sound();

    KitchenView kitchen = pages.uncooked("solstice", "K4T", "1", "Rook", "a-wish");

    assertThat(kitchen.pots().get(0).cooked()).isEmpty();
    assertThat(lots.lot("K4T").orElseThrow().lot().fruits().sound()).isEqualTo(left + 1);
    assertThat(pages.uncooked("solstice", "K4T", "1", "Rook", "once-more")).isEqualTo(kitchen);
    pages.cooked("solstice", note, "Wren", "noted-anew");
    scoreEverything("solstice");
    pages.close("solstice", AS_PLANNED, "Wren", request());
    assertThatThrownBy(() -> pages.uncooked("solstice", "K4T", "1", "Rook", "too-late"))
        .hasMessageContaining("it is closed, and its codes have been opened");
    assertThat(lots.lot("K4T").orElseThrow().lot().fruits().sound()).isEqualTo(left);
  }

  @Test
  void whatCannotStand_isRefusedWithItsReason() throws TastingRefused {
    plan("solstice");
    assertThatThrownBy(() -> plan("solstice")).hasMessageContaining("is planned already");
    assertThatThrownBy(() -> pages.close("solstice", AS_PLANNED, "Wren", request()))
        .hasMessageContaining("nobody has scored anything yet");
    String ash = secret("solstice", "Ash");
    String others = pages.sheet(secret("solstice", "Wren")).orElseThrow().cups().get(0).code();
    assertThatThrownBy(() -> pages.score(ash, cup(others, 7), request(), now))
        .hasMessageContaining("it must be one of the cups of Ash");
    assertThatThrownBy(() -> pages.score("wrong", cup(others, 7), request(), now))
        .isInstanceOfSatisfying(
            TastingRefused.class, refused -> assertThat(refused.why()).isEqualTo(Why.UNKNOWN));
    scoreEverything("solstice");
    assertThat(pages.tasting("solstice").orElseThrow().fruitsOpen()).isEqualTo(2);
    assertThatThrownBy(() -> pages.close("solstice", new EndRequest(null), "Wren", request()))
        .hasMessageContaining("nobody said which fruits were cooked for");
    pages.close("solstice", AS_PLANNED, "Wren", request());
    assertThat(pages.tasting("solstice").orElseThrow().fruitsOpen()).isZero();
    assertThatThrownBy(() -> pages.score(ash, cup(others, 7), request(), now))
        .isInstanceOfSatisfying(
            TastingRefused.class, refused -> assertThat(refused.why()).isEqualTo(Why.CONTRADICTED))
        .hasMessageContaining("it was closed at");
  }

  @Test
  void variety_isDecidedOn_andALaterDecisionStands() throws DecisionRefused {
    decide("Winterglut", "drop", "");
    decide("Winterglut", "try-again", "sow in April");
    VarietyView winterglut =
        varieties.varieties(ALL).varieties().stream()
            .filter(v -> v.variety().equals("Winterglut"))
            .findFirst()
            .orElseThrow();
    assertThat(winterglut.decided().words()).isEqualTo("try again");
    assertThat(winterglut.decided().reason()).isEqualTo("sow in April");
    assertThat(winterglut.ripens().answer()).isEqualTo("not known whether it ripens here");
    assertThatThrownBy(() -> decide("Nobody's", "drop", ""))
        .hasMessageContaining("no lot of that variety came in");
    assertThatThrownBy(() -> decide("Winterglut", "praise", ""))
        .hasMessageContaining("[grow-again, try-again, drop]");
  }

  private void plan(String name) throws TastingRefused {
    TastingView unused =
        pages.plan(
            new PlanRequest(
                name,
                List.of(new SampleRequest("k4t", null), new SampleRequest("B1", null)),
                TASTERS,
                null,
                null,
                null,
                null,
                null,
                null,
                "baked",
                190.0,
                null,
                null,
                null,
                null),
            "Wren",
            request());
  }

  private void scoreEverything(String name) throws TastingRefused {
    for (KitchenView.TrayView tray : pages.kitchen(name).orElseThrow().trays()) {
      for (FilledView cup : tray.cups()) {
        var unused =
            pages.score(
                secret(name, tray.taster()),
                cup(cup.code(), LIKING.get(cup.sample())),
                request(),
                now);
      }
    }
  }

  private void decide(String variety, String decision, String reason) throws DecisionRefused {
    var unused =
        varieties.decide(
            new DecisionRequest("kabocha", variety, decision, reason), "Wren", request());
  }

  private static CupRequest cup(String code, int liking) {
    return new CupRequest(code, Map.of("liking", liking), List.of("soup"), null);
  }

  private String secret(String name, String taster) {
    return pages.kitchen(name).orElseThrow().trays().stream()
        .filter(tray -> tray.taster().equals(taster))
        .map(tray -> tray.link().substring("/taste/".length()))
        .findFirst()
        .orElseThrow();
  }

  private String request() {
    return "request-" + ++requests;
  }
}
