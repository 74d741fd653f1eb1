package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.AlarmState;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Judgement;
import rindward.controller.alarm.Priority;
import rindward.controller.crop.Harm;
import rindward.controller.journal.AlarmAnswer;
import rindward.controller.journal.AlarmAnswered;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Entry;
import rindward.controller.journal.HarmLifted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Moved;
import rindward.controller.journal.WorkAnnounced;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.Settings;
import rindward.controller.store.AlarmLog;
import rindward.controller.store.Database;
import rindward.controller.store.EventLog;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.ShedFault.Kind;
import rindward.hardware.shed.Weather;

/** From a broken part to the alarm that a grower sees, on the daemon itself. */
class AlarmsScenarioTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");
  private static final Weather WEATHER = GeneratedWeather.temperate(7);
  private static final AlarmTable TABLE = AlarmTableReader.builtIn();
  private static final AlarmId DEAD =
      new AlarmId(AlarmKind.HEATER_WITHOUT_EFFECT, "storage", "storage-heater");

  @TempDir private Path folder;
  private Settings settings;
  private SimulatedRun rehearsal;
  private int requests;

  @BeforeEach
  void aColdEveningWithSquashInStorage() throws Exception {
    settings = SimulatedRunScenarioTest.settingsAt(folder);
    rehearsal = new SimulatedRun(settings, WEATHER, START);
    say(new Harvested("BN1", "butternut", "Fallow Bell", 200, "storage", START));
    say(new Harvested("PP1", "pie-pumpkin", "Lantern Lane", 9, "curing", START));
    say(new Moved("PP1", "storage", START.plusSeconds(1)));
    rehearsal.load("storage", "BN1", 300);
    rehearsal.heed();
    rehearsal.advance(Duration.ofHours(36));
  }

  @AfterEach
  void close() {
    rehearsal.daemon().close();
  }

  @Test
  void aHeaterThatDies_isOneAlarm_andAnAnswerSurvivesARestart() throws Exception {
    assertThat(urgent()).isEmpty();
    rehearsal.shed().inject(ShedFault.of(Kind.OUTPUT_DEAD, "storage-heater"));
    rehearsal.advance(Duration.ofMinutes(40));
    assertThat(urgent()).containsExactly(DEAD);
    assertThat(state(DEAD)).isEqualTo(AlarmState.UNACKNOWLEDGED);

    say(new AlarmAnswered(DEAD.key(), AlarmAnswer.ACKNOWLEDGED, null, rehearsal.now()));
    rehearsal.heed();
    rehearsal.advance(Duration.ofMinutes(1));
    assertThat(state(DEAD)).isEqualTo(AlarmState.ACKNOWLEDGED);

    Instant later = rehearsal.now().plus(Duration.ofMinutes(2));
    rehearsal.daemon().close();
    rehearsal = new SimulatedRun(settings, WEATHER, later);
    rehearsal.advance(Duration.ofMinutes(1));
    assertThat(state(DEAD)).isEqualTo(AlarmState.ACKNOWLEDGED);
    rehearsal.daemon().flush();
    assertThat(turns().stream().filter(n -> n.turn().change().isCall()).map(this::id).toList())
        .containsOnlyOnce(DEAD);
    assertThat(turns().stream().filter(n -> n.turn().by().equals("Wren")).map(this::id).toList())
        .containsExactly(DEAD);
  }

  @Test
  void aHeaterWhoseContactWelds_isSeenWithinAQuarterOfAnHourOfBeingSwitchedOff() throws Exception {
    while (!isHeating()) {
      rehearsal.advance(Duration.ofSeconds(10));
    }
    rehearsal.shed().inject(ShedFault.of(Kind.OUTPUT_STUCK_ON, "storage-heater"));
    while (isHeating()) {
      rehearsal.advance(Duration.ofSeconds(10));
    }
    rehearsal.advance(Duration.ofMinutes(16));
    assertThat(urgent())
        .containsExactly(new AlarmId(AlarmKind.HEATER_RUNAWAY, "storage", "storage-heater"));
  }

  @Test
  void aBitterFruit_wakesWithTheNextTick_untilTheOwnerLiftsIt() throws Exception {
    AlarmId harmful = new AlarmId(AlarmKind.LOT_HARMFUL, "", "BN1");
    CutFruit cut = new CutFruit(null, null, "", false, false, null, null, List.of(Harm.BITTER));
    say(new KitchenTasted("BN1", null, cut, null, null, List.of(), "", rehearsal.now()));
    rehearsal.advance(Duration.ofSeconds(10));
    assertThat(urgent()).containsExactly(harmful);
    rehearsal.daemon().flush();
    assertThat(turns().stream().filter(n -> n.turn().change().isCall()).map(this::id).toList())
        .contains(harmful);

    say(new HarmLifted("BN1", "a gourd of the neighbours", rehearsal.now()));
    rehearsal.advance(Duration.ofSeconds(10));
    assertThat(judgement().alarms().alarm(harmful).condition().active()).isFalse();
  }

  @Test
  void aSilentProbe_waitsForTheDigest_whileAnotherHoldsTheRoom() throws Exception {
    rehearsal.shed().inject(ShedFault.of(Kind.PROBE_SILENT, "outdoor"));
    rehearsal.advance(Duration.ofMinutes(7));
    AlarmId silent = new AlarmId(AlarmKind.PROBE_SILENT, "", "outdoor");
    assertThat(judgement().open(TABLE)).contains(silent);
    assertThat(urgent()).isEmpty();
  }

  @Test
  void theOnlyProbeOfARoom_silentInTheCold_wakes() throws Exception {
    rehearsal.shed().inject(ShedFault.of(Kind.PROBE_SILENT, "storage-air"));
    rehearsal.advance(Duration.ofMinutes(7));
    assertThat(urgent()).containsExactly(AlarmId.of(AlarmKind.UNHELD_IN_COLD, "storage"));
    assertThat(judgement().open(TABLE)).hasSize(1);
  }

  @Test
  void whileSomebodyWorksInARoom_anOpenDoorIsNoAlarm() throws Exception {
    say(new WorkAnnounced("storage", rehearsal.now().plusSeconds(7200), rehearsal.now()));
    rehearsal.heed();
    rehearsal.shed().inject(ShedFault.of(Kind.DOOR_OPEN, "storage", 0.3));
    rehearsal.advance(Duration.ofMinutes(5));
    AlarmId fast = AlarmId.of(AlarmKind.COOLING_FASTER, "storage");
    assertThat(judgement().open(TABLE)).doesNotContain(fast);
    assertThat(state(fast)).isEqualTo(AlarmState.SHELVED);
  }

  @Test
  void aRoomAtRest_isSilentHoweverColdItGets() throws Exception {
    rehearsal.advance(Duration.ofDays(1));
    assertThat(judgement().open(TABLE).stream().filter(id -> id.room().equals("curing"))).isEmpty();
  }

  private boolean isHeating() {
    return rehearsal.daemon().latest().rooms().get(1).isOn(OutputKind.HEATER);
  }

  private List<AlarmId> urgent() {
    return judgement().open(TABLE).stream()
        .filter(id -> TABLE.row(id.kind()).priority() == Priority.WAKE)
        .toList();
  }

  private Judgement judgement() {
    return rehearsal.daemon().latest().judgement();
  }

  private AlarmState state(AlarmId id) {
    return judgement().alarms().alarm(id).state();
  }

  private List<AlarmLog.Noted> turns() {
    try (Database database = new Database(settings.store())) {
      return new AlarmLog(new EventLog(database)).page(Long.MAX_VALUE, Long.MAX_VALUE, 100);
    }
  }

  private AlarmId id(AlarmLog.Noted noted) {
    return noted.turn().change().id();
  }

  private void say(Entry entry) {
    assertThat(
            rehearsal
                .daemon()
                .door()
                .say(entry, "Wren", "r" + requests++, OptionalLong.empty(), rehearsal.now())
                .refusal())
        .isEmpty();
  }
}
