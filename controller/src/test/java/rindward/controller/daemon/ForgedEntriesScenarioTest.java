package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.controller.store.Journal;
import rindward.controller.store.SignInStore;
import rindward.controller.store.StoredPerson;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;

/**
 * A page that somebody has taken over writes what it likes into the record, past every check of its
 * own: control goes on as before, nothing is on that should not be, and it still calls.
 */
class ForgedEntriesScenarioTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");

  @TempDir private Path folder;
  private Settings settings;
  private SimulatedRun shed;
  private Database page;
  private int forged;

  @BeforeEach
  void aShedWithAnOwnerAndAHelper() throws Exception {
    Path file = folder.resolve("shed.toml");
    Files.writeString(file, Files.readString(Path.of("examples/shed.toml")));
    settings = SettingsReader.read(file, new Problems()).orElseThrow();
    shed = new SimulatedRun(settings, GeneratedWeather.temperate(7), START);
    page = new Database(settings.store());
    SignInStore people = new SignInStore(page);
    people.keep(new StoredPerson("Wren", "owner", "x"));
    people.keep(new StoredPerson("Ash", "helper", "x"));
    people.keep(new StoredPerson("Tam", "panelist", "x"));
    shed.advance(Duration.ofHours(6));
  }

  @AfterEach
  void close() {
    page.close();
    shed.daemon().close();
  }

  @Test
  void aRange_fromAHelper_orFromNobody_orBeyondAnyRoom_isNotAskedOfTheRoom() throws Exception {
    var before = storage().demand().range();
    forge("Ash", range(20_000, 25_000));
    forge("", range(20_000, 25_000));
    forge("Wren", range(60_000, 90_000));
    forge("Wren", range(25_000, 20_000));

    shed.advance(Duration.ofMinutes(1));

    assertThat(storage().demand().range()).isEqualTo(before);
    forge("Wren", range(14_000, 16_000));
    shed.advance(Duration.ofMinutes(1));
    assertThat(storage().demand().range()).as("the owner's counts").isNotEqualTo(before);
  }

  @Test
  void on_fromATaster_orLate_orForEver_orForWhatIsNotThere_switchesNothing() throws Exception {
    Instant now = shed.now();
    forge("Tam", hand("HEATER", true, now.plusSeconds(600), now));
    forge("Ash", hand("HEATER", true, now.plusSeconds(600), now.minusSeconds(11)));
    forge("Ash", hand("HEATER", true, now.plus(Duration.ofDays(400)), now));
    forge("Ash", hand("HEATER", true, now.minusSeconds(1), now));
    forge("Ash", hand("COOLER", true, now.plusSeconds(600), now));
    forge("Ash", hand("BOILER", true, now.plusSeconds(600), now));

    shed.heed();
    shed.daemon().step();

    assertThat(storage().demand().commands()).noneMatch(c -> c.kind() == OutputKind.HEATER);
    assertThat(storage().isOn(OutputKind.COOLER)).isFalse();
  }

  @Test
  void on_thatWasSaidBeforeARestart_isVoid_andOffIsNot() throws Exception {
    Instant now = shed.now();
    forge("Ash", hand("CIRCULATION", true, now.plusSeconds(6_000), now));
    forge("Tam", hand("HEATER", false, now.plusSeconds(6_000), now));
    shed.daemon().close();

    shed = new SimulatedRun(settings, GeneratedWeather.temperate(7), now.plusSeconds(2));
    shed.daemon().step();

    assertThat(storage().demand().commands())
        .as("in the first tick already")
        .singleElement()
        .satisfies(
            command -> {
              assertThat(command.on()).isFalse();
              assertThat(command.kind()).isEqualTo(OutputKind.HEATER);
            });
    shed.advance(Duration.ofMinutes(1));
    assertThat(storage().demand().commands()).hasSize(1);
  }

  @Test
  void whatWakes_cannotBeAcceptedAway() throws Exception {
    AlarmId cold = AlarmId.of(AlarmKind.UNHELD_IN_COLD, "storage");
    forge("Wren", answered(cold.key(), "ACCEPTED", null));
    shed.advance(Duration.ofMinutes(1));

    shed.shed().inject(ShedFault.of(ShedFault.Kind.PROBE_SILENT, "storage-air"));
    shed.advance(Duration.ofMinutes(10));

    assertThat(shed.daemon().latest().judgement().open(AlarmTableReader.builtIn())).contains(cold);
  }

  @Test
  void aShelfForEver_endsWithinADay() throws Exception {
    AlarmId silent = new AlarmId(AlarmKind.PROBE_SILENT, "", "outdoor");
    shed.shed().inject(ShedFault.of(ShedFault.Kind.PROBE_SILENT, "outdoor"));
    shed.advance(Duration.ofMinutes(10));
    forge("Ash", answered(silent.key(), "SHELVED", shed.now().plus(Duration.ofDays(4_000))));
    shed.advance(Duration.ofHours(25));

    assertThat(shed.daemon().latest().judgement().open(AlarmTableReader.builtIn()))
        .contains(silent);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "nonsense",
        "[]",
        "null",
        "{\"kind\":\"switched-by-hand\"}",
        "{\"kind\":\"switched-by-hand\",\"room\":7,\"part\":[],\"on\":\"yes\",\"until\":0,\"at\":{}}",
        "{\"kind\":\"switched-by-hand\",\"room\":\"storage\",\"part\":\"HEATER\",\"on\":true,"
            + "\"until\":\"+999999999-12-31T23:59:59Z\",\"at\":\"-999999999-01-01T00:00:00Z\"}",
        "{\"kind\":\"let-run\",\"room\":\"storage\",\"part\":\"HEATER\"}",
        "{\"kind\":\"room-asked\",\"room\":\"storage\",\"range\":{},\"at\":\"2026-12-10T18:00:00Z\"}",
        "{\"kind\":\"accuracy-stated\",\"room\":\"storage\",\"temperatureMilliC\":-2147483648,"
            + "\"humidityMilliPct\":2147483647,\"at\":\"2026-12-10T18:00:00Z\"}"
      })
  void spoiltEntries_endNothing_andSwitchNothingOn(String body) throws Exception {
    boolean wasOn = storage().isOn(OutputKind.HEATER);
    long ticks = shed.daemon().latest().tick();
    forge("Wren", body);

    shed.heed();
    shed.daemon().step();
    assertThat(storage().isOn(OutputKind.HEATER)).isIn(wasOn, false);
    shed.advance(Duration.ofMinutes(10));

    assertThat(shed.daemon().latest().tick()).isEqualTo(ticks + 61);
    assertThat(storage().demand().commands()).noneMatch(command -> command.on());
    forge("Wren", hand("CIRCULATION", false, shed.now().plusSeconds(600), shed.now()));
    shed.heed();
    shed.daemon().step();
    assertThat(storage().demand().commands())
        .as("what is said after it is heard")
        .anyMatch(command -> command.kind() == OutputKind.CIRCULATION);
  }

  @Test
  void afterAllOfIt_theRoomIsHeldAsBefore() throws Exception {
    for (int i = 0; i < 2_000; i++) {
      forge("Ash", hand("HEATER", i % 2 == 0, shed.now().minusSeconds(60), shed.now()));
    }
    shed.advance(Duration.ofHours(3));

    assertThat(storage().picture().temperatureMilliC())
        .isBetween(
            storage().range().temperature().low() - 1_000,
            storage().range().temperature().high() + 1_000);
  }

  private RoomState storage() {
    return shed.daemon().latest().rooms().get(1);
  }

  private void forge(String by, String body) {
    new Journal(page)
        .append(
            "forged-" + forged++,
            "hand storage",
            OptionalLong.empty(),
            shed.now().toEpochMilli(),
            by,
            body);
  }

  private String range(int lowMilliC, int highMilliC) {
    return """
    {"kind":"room-asked","room":"storage","range":{"temperature":{"low":%d,"high":%d},
     "humidity":{"low":50000,"high":70000}},"slideMilliCPerDay":0,"rests":false,"at":"%s"}\
    """
        .formatted(lowMilliC, highMilliC, shed.now());
  }

  private static String hand(String part, boolean on, Instant until, Instant at) {
    return """
    {"kind":"switched-by-hand","room":"storage","part":"%s","on":%s,"until":"%s","at":"%s"}\
    """
        .formatted(part, on, until, at);
  }

  private String answered(String alarm, String answer, Instant until) {
    return """
    {"kind":"alarm-answered","alarm":"%s","answer":"%s",%s"at":"%s"}\
    """
        .formatted(alarm, answer, until == null ? "" : "\"until\":\"" + until + "\",", shed.now());
  }

  /** Otherwise nothing above would say anything. */
  @Test
  void whatIsWrittenAndMaySo_isHeard() throws Exception {
    Instant now = shed.now();
    forge("Ash", hand("CIRCULATION", true, now.plusSeconds(600), now));
    shed.heed();
    shed.daemon().step();

    assertThat(storage().demand().commands()).hasSize(1);
  }
}
