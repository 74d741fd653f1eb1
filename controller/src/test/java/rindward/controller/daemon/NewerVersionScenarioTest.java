package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.exchange.LotFile;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.Noted;
import rindward.controller.journal.Withdrawn;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Stop;
import rindward.controller.page.Page;
import rindward.controller.room.Room;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.store.copies.Copies;
import rindward.dashboard.shed.ManualCommand;
import rindward.dashboard.shed.SwitchingRefused;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.SimulatedShed;

/**
 * This program beside one that is newer: what it cannot read stops nothing, is treated with care,
 * and is told.
 */
class NewerVersionScenarioTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");
  private static final Instant PICKED = START.minus(Duration.ofDays(60));

  private static final String OF_LOT =
      "{\"kind\":\"locked-out\",\"lot\":\"KB1\",\"why\":\"\u00e9t\u00e9, 7\","
          + "\"at\":\"2026-12-10T17:00:00Z\"}";

  @TempDir private Path folder;
  private Settings settings;
  private Time.Stepped time;
  private Daemon daemon;
  private int said;

  @BeforeEach
  void start() throws Exception {
    Path file = folder.resolve("shed.toml");
    String example = Files.readString(Path.of("examples/shed.toml"));
    Files.writeString(file, example.replace("port = 8420", "port = 0"));
    settings = SettingsReader.read(file, new Problems()).orElseThrow().commissioned(output -> true);
    open();
    daemon
        .door()
        .say(
            new Harvested("KB1", "kabocha", "", 40, room().name(), PICKED),
            "Wren",
            "harvest",
            OptionalLong.empty(),
            START);
    daemon
        .door()
        .say(
            new Harvested("KB2", "kabocha", "", 40, room().name(), PICKED),
            "Wren",
            "harvest-2",
            OptionalLong.empty(),
            START);
  }

  private void open() throws Exception {
    time = new Time.Stepped(START);
    SimulatedShed shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time);
    daemon = new Daemon(settings, shed, time, false);
  }

  @AfterEach
  void close() {
    daemon.close();
  }

  /** A command of the next version, as it writes beside this daemon. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        OF_LOT,
        "{\"kind\":\"noted\",\"version\":2,\"lot\":\"KB1\",\"text\":\"hm\",\"at\":\"2026-12-10T17:00:00Z\"}",
        "{\"kind\":\"noted\",\"lot\":\"KB1\",\"text\":\"hm\",\"stops\":true,\"at\":\"2026-12-10T17:00:00Z\"}",
        "{\"kind\":\"culled\",\"lot\":\"KB1\",\"count\":1,\"cause\":\"BITTER\",\"note\":\"\",\"at\":\"2026-12-10T17:00:00Z\"}",
        "{\"kind\":\"noted\",\"lot\":\"KB1\",\"text\":7,\"at\":\"2026-12-10T17:00:00Z\"}",
        "not even JSON",
        "[]"
      })
  void whatCannotBeRead_stopsTheLotAndNothingElse(String body) throws Exception {
    newer("KB1", body);

    tick();

    assertThat(alarms()).contains("newer-entries").doesNotContain("unread-command");
    assertThat(lot("KB1").unread()).hasSize(1);
    assertThat(Stop.of(lot("KB1"), settings.crops()).orElseThrow().sentences())
        .containsExactly(NewerEntry.SENTENCE);
    assertThat(Stop.of(lot("KB2"), settings.crops())).isEmpty();
    assertThat(command()).isEmpty();
    assertThat(
            daemon
                .door()
                .say(new Noted("KB2", "fine", START), "Wren", "n", OptionalLong.empty(), START)
                .refusal())
        .isEmpty();
  }

  @Test
  void aKnownKindWithAFieldTooMany_isStillTold() throws Exception {
    newer(
        "KB1",
        "{\"kind\":\"culled\",\"lot\":\"KB1\",\"count\":3,\"cause\":\"ROT\",\"note\":\"\","
            + "\"spread\":true,\"at\":\"2026-12-10T17:00:00Z\"}");

    assertThat(lot("KB1").fruits().sound()).isEqualTo(37);
    assertThat(lot("KB1").unread()).hasSize(1);
  }

  @Test
  void onlyTheNewerVersion_takesBackWhatItSaid() throws Exception {
    long id = newer("KB1", OF_LOT);

    assertThat(
            daemon
                .door()
                .say(new Withdrawn("KB1", id, START), "Wren", "w", OptionalLong.empty(), START)
                .refusal())
        .hasValue(
            "entry was '"
                + id
                + "' but a newer version of this program said it, and only that version can change"
                + " it");
  }

  @Test
  void somethingOfARoom_letsNobodySwitchOnByHand_butControlGoesOn() throws Exception {
    tick();
    assertThat(command()).isEmpty();
    assertThat(daemon.demands().of(room(), START).commands()).hasSize(1);
    newer(room().name(), "{\"kind\":\"closed-off\",\"room\":\"" + room().name() + "\"}");

    tick();

    assertThat(command()).hasValueSatisfying(s -> assertThat(s).contains("A newer version"));
    assertThat(daemon.demands().of(room(), START).commands()).isEmpty();
    assertThat(daemon.demands().of(room(), START).isObserved()).isFalse();
    assertThat(Stop.of(lot("KB1"), settings.crops())).isPresent();
    assertThat(alarms()).contains("newer-entries").doesNotContain("unread-command");
  }

  @Test
  void somethingOfAnOutput_leavesItsRoomObserved_andWakes() throws Exception {
    String heater = room().outputs().get(OutputKind.HEATER).name();
    newer(heater, "{\"kind\":\"locked\",\"output\":\"" + heater + "\"}");

    tick();
    tick();

    assertThat(daemon.demands().of(room(), START).isObserved()).isTrue();
    assertThat(daemon.latest().rooms().stream().filter(r -> r.room().name().equals(room().name())))
        .allSatisfy(state -> assertThat(state.room().outputs().keySet()).noneMatch(state::isOn));
    assertThat(command()).isPresent();
    assertThat(alarms()).contains("unread-command");
  }

  @Test
  void aRestart_forgetsNothingOfIt() throws Exception {
    newer("KB1", OF_LOT);
    daemon.close();
    open();

    tick();

    assertThat(lot("KB1").unread()).hasSize(1);
    assertThat(alarms()).contains("newer-entries");
  }

  /** A newer copy restored, and then taken to the newer program as a file. */
  @Test
  void aCopyAndAFile_holdItByteForByte() throws Exception {
    newer("KB1", OF_LOT);
    Path copy;
    try (Database database = new Database(settings.store())) {
      copy = new Copies(database, folder.resolve("backups"), ZoneOffset.UTC).make(START);
    }
    try (Database restored = new Database(copy)) {
      EntryService door = new EntryService(new Journal(restored), settings.crops());
      Path file = folder.resolve("lots.csv");
      Files.writeString(file, LotFile.write(Lots.standing(door.journal())));
      LotFile.Content content = LotFile.read(file, ZoneOffset.UTC, UnaryOperator.identity());

      assertThat(content.rejected()).isEmpty();
      assertThat(content.rows())
          .extracting(LotFile.Row::entry)
          .filteredOn(NewerEntry.class::isInstance)
          .extracting(entry -> ((NewerEntry) entry).body())
          .containsExactly(OF_LOT);

      try (Database other = new Database(folder.resolve("other.db"))) {
        Journal journal = new Journal(other);
        new EntryService(journal, settings.crops())
            .sayAll(content.rows().stream().map(LotFile.Row::entry).toList(), "Wren", "r", START);
        assertThat(journal.find("r/2").orElseThrow().body()).isEqualTo(OF_LOT);
      }
    }
  }

  private long newer(String subject, String body) {
    try (Database database = new Database(settings.store())) {
      Journal journal = new Journal(database);
      journal.append(
          "newer-" + said++, subject, OptionalLong.empty(), START.toEpochMilli(), "Wren", body);
      return journal.find("newer-" + (said - 1)).orElseThrow().id();
    }
  }

  private void tick() throws InterruptedException {
    daemon.hear();
    time.advance(settings.tick());
    daemon.step();
  }

  private List<String> alarms() {
    return daemon.latest().judgement().alarms().all().keySet().stream()
        .map(id -> id.kind())
        .map(AlarmKind::word)
        .toList();
  }

  private Optional<String> command() {
    try (Page page = new Page(settings, daemon.view(), time)) {
      Instant until = time.now().at().plusSeconds(600);
      String request = "command-" + said++;
      page.shed()
          .command(new ManualCommand(room().name(), "circulation", true, until, "Wren", request));
      return Optional.empty();
    } catch (SwitchingRefused refused) {
      return Optional.of(String.valueOf(refused.getMessage()));
    }
  }

  private Lot lot(String code) {
    return Lots.of(daemon.door().journal()).find(code).orElseThrow();
  }

  private Room room() {
    return settings.rooms().get(0);
  }
}
