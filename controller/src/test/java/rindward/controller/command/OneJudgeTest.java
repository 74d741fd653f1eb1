package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.command.base.VerdictAnswer;
import rindward.controller.command.demo.DemoFarm;
import rindward.controller.command.demo.DemoNotes;
import rindward.controller.desk.LotPages;
import rindward.controller.desk.VarietyPages;
import rindward.controller.diagnosis.LotFactCollector;
import rindward.controller.diagnosis.LotNotes;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Moved;
import rindward.controller.judge.LotJudge;
import rindward.controller.judge.LotNews;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.store.current.CurrentJournal;
import rindward.controller.store.current.FinishedLots;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.dashboard.lots.LotChange;
import rindward.dashboard.lots.LotLine;
import rindward.dashboard.lots.LotLine.VerdictView;
import rindward.dashboard.lots.LotRefused;
import rindward.dashboard.request.Page;
import rindward.dashboard.varieties.VarietiesView.VarietyView;

/**
 * Page, command and alarms are asked about the demo's lots at the same moment: each says the same,
 * word for word. The air of the rooms is made up, so that ten weeks take a second.
 */
class OneJudgeTest {
  private static final Duration STEP = Duration.ofMinutes(5);

  @TempDir Path folder;
  private final Instant now = Instant.now();
  private OwnFarm farm;
  private Settings settings;
  private Database database;
  private EntryService door;
  private LotJudge judge;
  private CurrentJournal current;
  private LotJudge control;
  private LotPages pages;
  private int requests;

  @BeforeEach
  void tenWeeksOfTheDemo() throws Exception {
    farm = OwnFarm.in(folder);
    settings = SettingsReader.read(farm.settings(), new Problems()).orElseThrow();
    database = new Database(settings.store());
    door = new EntryService(new Journal(database), settings.crops());
    DemoFarm demo = new DemoFarm(now);
    List<DemoNotes.Note> said = new ArrayList<>(new DemoNotes(demo.start()).all());
    demo.deeds().forEach(deed -> said.add(new DemoNotes.Note(deed.day(), deed.entry())));
    said.sort(Comparator.comparingInt(DemoNotes.Note::day));
    for (DemoNotes.Note note : said) {
      say(note.entry(), demo.start().plus(Duration.ofDays(note.day())));
    }
    SampleLog log = new SampleLog(database);
    for (Instant at = demo.start(); at.isBefore(now); at = at.plus(STEP)) {
      log.sample("curing", at.toEpochMilli(), 27_600, 77_000);
      log.sample("storage", at.toEpochMilli(), 11_800, 63_000);
      if (at.toEpochMilli() % Duration.ofDays(1).toMillis() < STEP.toMillis()) {
        log.flush(at.toEpochMilli());
      }
    }
    log.flush(now.toEpochMilli());
    new DemoNotes(demo.start()).measureTheBarn(database);
    SampleStore samples = new SampleStore(database, log);
    long holdMillis = settings.hold().toMillis();
    judge = new LotJudge(settings.crops(), holdMillis, samples::history, door::journal);
    current = new CurrentJournal(database, settings.crops(), "this program");
    control =
        new LotJudge(
            settings.crops(),
            holdMillis,
            samples::history,
            current::entries,
            new FinishedLots(
                database, settings.crops(), holdMillis, samples::history, current, () -> now));
    pages =
        new LotPages(
            settings.rooms(),
            settings.zone(),
            settings.crops(),
            holdMillis,
            door,
            judge,
            samples::history,
            Runnable::run,
            () -> now);
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void everyLot_isToldTheSame_whoeverIsAsked() throws Exception {
    Map<String, VerdictAnswer> byPage = byPage();
    assertThat(byPage).hasSizeGreaterThan(8);
    assertThat(byCommand()).isEqualTo(byPage);
    assertThat(byAlarms()).isEqualTo(byPage);
  }

  @Test
  void aFruitThatRotted_countsAtOnce_whereverItIsAsked() throws Exception {
    var unused = List.of(byPage(), byAlarms());
    say(new Culled("S8A", 2, Cause.ROT, "", now.minus(Duration.ofDays(30))), now);
    Map<String, VerdictAnswer> byPage = byPage();
    assertThat(byCommand()).isEqualTo(byPage);
    assertThat(byAlarms()).isEqualTo(byPage);
    judge.forget();
    control.forget();
    assertThat(byPage()).as("what is remembered may be forgotten").isEqualTo(byPage);
    assertThat(byAlarms()).isEqualTo(byPage);
  }

  @Test
  void whatToEatFirst_standsInTheSameOrder() throws Exception {
    List<String> byPage =
        pages.lots(false, 0, 200).lots().stream()
            .filter(line -> line.eatRank() != null)
            .map(LotLine::code)
            .toList();
    List<String> byCommand = new ArrayList<>();
    json("eat").at("/lots").forEach(lot -> byCommand.add(lot.at("/code").asText()));
    assertThat(byPage).isNotEmpty();
    assertThat(byCommand).isEqualTo(byPage);
  }

  @Test
  void aPlaceThatDoesNotSuit_isToldInTheSameWords() throws Exception {
    Moved moved = new Moved("D3C", "curing", now);
    List<String> byPage =
        pages
            .say(
                "moved",
                List.of("D3C"),
                Map.of("place", "curing"),
                new LotChange("Wren", "r", Map.of(), now))
            .warnings();
    String byCommand = farm.done("lot", "move", moved.lot(), "--place", "curing");
    assertThat(byPage).hasSize(1);
    assertThat(byCommand).endsWith(byPage.get(0) + "\n");
  }

  @Test
  void aHarvestIntoARoom_isWarnedOf_alike() throws LotRefused {
    List<String> byPage =
        pages
            .say(
                "harvested",
                List.of("Z9Z"),
                Map.of("crop", "acorn", "count", "5", "place", "curing"),
                new LotChange("Wren", "r", Map.of(), now))
            .warnings();
    String byCommand =
        farm.done("lot", "add", "Z8Z", "--crop", "acorn", "--place", "curing", "--count", "5");
    assertThat(byPage).hasSize(1);
    assertThat(byCommand.lines().skip(1).map(line -> line.replace("Z8Z", "Z9Z")).toList())
        .isEqualTo(byPage);
  }

  @Test
  void everyVariety_isToldTheSame() throws Exception {
    Map<String, List<String>> byPage = new LinkedHashMap<>();
    new VarietyPages(settings.zone(), settings.crops(), door, pages, () -> now)
        .varieties(new Page(0, 100))
        .varieties()
        .forEach(variety -> byPage.put(variety.variety(), sentences(variety)));
    Map<String, List<String>> byCommand = new LinkedHashMap<>();
    json("variety", "show")
        .at("/varieties")
        .forEach(variety -> byCommand.put(variety.at("/variety").asText(), sentences(variety)));
    assertThat(byPage).isNotEmpty();
    assertThat(byCommand).containsExactlyInAnyOrderEntriesOf(byPage);
  }

  private Map<String, VerdictAnswer> byPage() {
    Map<String, VerdictAnswer> all = new LinkedHashMap<>();
    for (LotLine line : pages.lots(false, 0, 200).lots()) {
      VerdictView verdict = line.verdict();
      if (verdict != null) {
        all.put(line.code(), answer(verdict));
      }
    }
    return all;
  }

  private static VerdictAnswer answer(VerdictView verdict) {
    return new VerdictAnswer(
        verdict.words(),
        verdict.phase(),
        verdict.expected() == null ? null : verdict.expected().what(),
        verdict.expected() == null ? null : verdict.expected().from(),
        verdict.expected() == null ? null : verdict.expected().to(),
        verdict.reasons(),
        verdict.wouldChange(),
        List.of(),
        verdict.sureness());
  }

  private Map<String, VerdictAnswer> byCommand() throws Exception {
    Map<String, VerdictAnswer> all = new LinkedHashMap<>();
    for (JsonNode lot : json("lot", "list", "--verdicts").at("/lots")) {
      JsonNode verdict = lot.at("/verdict");
      all.put(
          lot.at("/code").asText(),
          new VerdictAnswer(
              verdict.at("/state").asText(),
              text(verdict, "/phase"),
              text(verdict, "/expected"),
              instant(verdict, "/from"),
              instant(verdict, "/to"),
              texts(verdict.at("/reasons")),
              verdict.at("/wouldChange").asText(),
              List.of(),
              verdict.at("/sureness").asText()));
    }
    return all;
  }

  private Map<String, VerdictAnswer> byAlarms() {
    Map<String, VerdictAnswer> all = new LinkedHashMap<>();
    LotNotes notes =
        new LotFactCollector(settings.rooms(), settings.crops())
            .look(control.told().lots(), LotNews.of(control.judge(now)));
    current.settle(control.told().journal(), control.told().lots());
    for (Offer offer : notes.lots()) {
      VerdictAnswer told = VerdictAnswer.of(offer.verdict());
      all.put(
          offer.lot().code(),
          new VerdictAnswer(
              told.state(),
              told.phase(),
              told.expected(),
              told.from(),
              told.to(),
              told.reasons(),
              told.wouldChange(),
              List.of(),
              told.sureness()));
    }
    return all;
  }

  private JsonNode json(String... words) throws Exception {
    // A command reads the clock itself: with a full hour in between, the air counts further.
    assumeThat(Instant.now().truncatedTo(ChronoUnit.HOURS))
        .isEqualTo(now.truncatedTo(ChronoUnit.HOURS));
    List<String> all = new ArrayList<>(List.of(words));
    all.add("--json");
    return new ObjectMapper().readTree(farm.done(all.toArray(String[]::new)));
  }

  private static List<String> sentences(VarietyView variety) {
    List<String> all = new ArrayList<>();
    for (var answer : List.of(variety.ripens(), variety.eats(), variety.keeps())) {
      all.add(answer.answer());
      all.addAll(answer.reasons());
    }
    all.addAll(variety.years());
    all.addAll(variety.setApart());
    all.addAll(variety.besideCheck());
    all.addAll(variety.suggestion().facts());
    all.add(variety.suggestion().change());
    return all;
  }

  private static List<String> sentences(JsonNode variety) {
    List<String> all = new ArrayList<>();
    for (String question : List.of("ripens", "eats", "keeps")) {
      all.add(variety.at("/" + question + "/answer").asText());
      all.addAll(texts(variety.at("/" + question + "/reasons")));
    }
    all.addAll(texts(variety.at("/yield")));
    all.addAll(texts(variety.at("/setApart")));
    all.addAll(texts(variety.at("/besideCheck")));
    all.addAll(texts(variety.at("/suggestion/facts")));
    all.add(variety.at("/suggestion/change").asText());
    return all;
  }

  private static @Nullable String text(JsonNode node, String path) {
    return node.at(path).isTextual() ? node.at(path).asText() : null;
  }

  private static @Nullable Instant instant(JsonNode node, String path) {
    String text = text(node, path);
    return text == null ? null : Instant.parse(text);
  }

  private static List<String> texts(JsonNode node) {
    List<String> all = new ArrayList<>();
    node.forEach(each -> all.add(each.asText()));
    return all;
  }

  private void say(Entry entry, Instant at) {
    EntryService.Said said = door.say(entry, "Wren", "r" + requests++, OptionalLong.empty(), at);
    assertThat(said.refusal()).isEmpty();
  }
}
