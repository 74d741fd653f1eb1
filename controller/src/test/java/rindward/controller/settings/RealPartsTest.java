package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Room;
import rindward.hardware.pi4j.ActiveLevel;
import rindward.hardware.sensor.SensorFamily;
import rindward.hardware.wired.GpioDriver;
import rindward.hardware.wired.I2cDriver;
import rindward.hardware.wired.I2cDriver.Branch;
import rindward.hardware.wired.Offset;
import rindward.hardware.wired.OneWireDriver;
import rindward.hardware.wired.Simulated;

/** What hangs on the board, as the example with real parts says it, and each slip in it. */
class RealPartsTest {
  private static final Path EXAMPLE = Path.of("examples/board.toml");

  @TempDir private Path folder;

  @Test
  void read_exampleWithRealParts_isUnderstood() {
    Problems problems = new Problems();

    Settings settings = SettingsReader.read(EXAMPLE, problems).orElseThrow();

    assertThat(problems.list()).isEmpty();
    assertThat(settings.isSimulated()).isFalse();
    assertThat(settings.probes().get(0).driver())
        .isEqualTo(new I2cDriver(SensorFamily.SHT4X, 1, 0x44, null));
    assertThat(settings.probes().get(0).offset()).isEqualTo(new Offset(-100, 800));
    assertThat(settings.probes().get(1).driver())
        .isEqualTo(new I2cDriver(SensorFamily.SHT3X, 1, 0x45, new Branch(0x70, 0)));
    assertThat(settings.probes().get(3).driver()).isEqualTo(new OneWireDriver("28-0316a2791bff"));
    assertThat(settings.outputs().get(0).driver()).isEqualTo(new GpioDriver(17, ActiveLevel.HIGH));
    assertThat(settings.broker()).isNotNull();
    assertThat(settings.broker().uri()).isEqualTo("tcp://192.168.1.20:1883");
    assertThat(settings.broker().passwordFile()).isAbsolute();
    assertThat(settings.broker().site()).isEqualTo("hollin-bank-farm");
  }

  @Test
  void accuracyLeftOut_isThatOfTheFamily() {
    Settings settings = SettingsReader.read(EXAMPLE, new Problems()).orElseThrow();

    assertThat(settings.probes().get(1).accuracy()).isEqualTo(new Accuracy(300, 3_000));
    assertThat(settings.probes().get(3).accuracy()).isEqualTo(new Accuracy(500, 0));
  }

  @Test
  void realRooms_areOnlyObserved_untilSomebodyTriedTheirOutputs() {
    Settings settings = SettingsReader.read(EXAMPLE, new Problems()).orElseThrow();

    assertThat(settings.rooms()).allMatch(Room::observeOnly);
    assertThat(settings.simulated().rooms()).noneMatch(Room::observeOnly);
    assertThat(settings.simulated().isSimulated()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "driver = \"sht4x\"|driver = \"sht5x\"|probes.curing-air.driver was 'sht5x' but it must be"
            + " one of simulated, sht3x, sht4x, bme280, 1-wire, hwmon, iio, mqtt",
        "serial = \"28-0316a2791bff\"|serial = \"0316a2791bff\"|probes.storage-fruit.serial was"
            + " '0316a2791bff' but it must be the serial of a DS18B20, as \"28-0316a2791bff\"",
        "serial = \"28-0316a2791bff\"||probes.storage-fruit.serial is missing but",
        "channel = 1|channel = 0|address of probe storage-corner was 0x45 but it must not be that"
            + " of probe storage-air too",
        "multiplexer = 0x70||probes.storage-air.multiplexer is missing but",
        "address = 0x45|address = 0x99|probes.storage-air.address was '153' but it must be an"
            + " address from 0x08 to 0x77",
        "temperature_at = \"/temperature\"|temperature_at = \"temperature\"|"
            + "probes.outdoor.temperature_at was 'temperature' but it must be a JSON Pointer",
        "device = \"bme280\"|name = \"bme280\"|probes.curing-corner.name is not a key known here",
        "accuracy = { temperature = 1, humidity = 3 }||probes.curing-corner.accuracy is missing",
        "line = 5|line = 17|outputs.curing-circulation was GPIO 17, on when low but it must not be"
            + " the part of outputs.curing-heater too",
        "active = \"high\"||outputs.curing-heater.active is missing but it must be one of high,"
            + " low",
        "auto_off = \"60s\"||outputs.storage-heater.auto_off is missing but a heater behind the"
            + " network must have a relay that switches itself off",
        "auto_off = \"60s\"|auto_off = \"5m\"|outputs.storage-heater.auto_off was '5m' but it must"
            + " be a time from 2s to 1m",
        "auto_off = \"60s\"|auto_off = \"15s\"|outputs.storage-heater.auto_off was '15s' but it"
            + " must be at least twice control.tick",
        "off = \"OFF\"|off = \"ON\"|outputs.storage-heater.off was 'ON' but it must differ",
        "host = \"192.168.1.20\"|host = \"tcp://here\"|broker.host was 'tcp://here' but it must",
        "user = \"shed\"||broker.user is missing but it must be there where a password is",
        "driver = \"1-wire\"|driver = \"simulated\"|probes.storage-fruit.serial is not a key",
      })
  void oneSlip_isOneSentence(String from, String to, String sentence) throws IOException {
    assertThat(problemsOf(from, to == null ? "" : to))
        .anySatisfy(said -> assertThat(said).contains(sentence));
  }

  @Test
  void simulatedProbeBesideARealHeater_isRefused() throws IOException {
    assertThat(
            problemsOf(
                "driver = \"1-wire\"\nserial = \"28-0316a2791bff\"",
                "driver = \"simulated\"\naccuracy = { temperature = 1, humidity = 1 }"))
        .singleElement()
        .asString()
        .contains(
            "probes.storage-fruit.driver was 'simulated' but it must be a real part as that of"
                + " probes.curing-air is");
  }

  @Test
  void networkProbeThatHoldsHeat_mayNotBeBelievedForMinutes() throws IOException {
    assertThat(problemsOf("place = \"outdoor\"", "room = \"curing\""))
        .singleElement()
        .asString()
        .contains("probes.outdoor.max_age was '5m' but it must be a time from 10s to 20s");
  }

  @Test
  void heartbeat_hasALineOfItsOwn_andATickThatItsRelayCanWaitFor() throws IOException {
    assertThat(problemsOf("[heartbeat]\nline = 24", "[heartbeat]\nline = 17"))
        .singleElement()
        .asString()
        .contains("heartbeat.line was '17' but it must not be the line of outputs.curing-heater");
    assertThat(problemsOf("tick = \"10s\"", "tick = \"15s\""))
        .singleElement()
        .asString()
        .contains("heartbeat.line was '24' but control.tick must then be at most 12s");
  }

  @Test
  void partThatSpeaksMqttWithoutABroker_isRefused() throws IOException {
    String text = Files.readString(EXAMPLE);
    int from = text.indexOf("[broker]");
    String broker = text.substring(from, text.indexOf("[rooms.curing]"));

    assertThat(problemsOf(broker, ""))
        .singleElement()
        .asString()
        .contains("broker is missing but it must be a table [broker]")
        .contains("because probes.outdoor speaks MQTT");
  }

  @Test
  void anAuthorityWithoutTls_isRefused() throws IOException {
    assertThat(problemsOf("user = \"shed\"", "ca_file = \"broker-ca.pem\"\nuser = \"shed\""))
        .singleElement()
        .asString()
        .contains("broker.ca_file", "tls must be true where it is given");
  }

  @Test
  void onePartForTwoProbes_isRefused() throws IOException {
    assertThat(
            problemsOf(
                "[probes.outdoor]",
                "[probes.fruit]\nroom = \"storage\"\ndriver = \"1-wire\"\n"
                    + "serial = \"28-0316a2791bff\"\n\n[probes.outdoor]"))
        .singleElement()
        .asString()
        .contains(
            "probes.fruit was 1-Wire 28-0316a2791bff but it must not be the part of"
                + " probes.storage-fruit too");
  }

  @Test
  void relayThatMayBeOnAtBoot_isToldInTheCheck() throws IOException {
    Path file = folder.resolve("board.toml");
    Files.writeString(file, Files.readString(EXAMPLE).replace("line = 17", "line = 7"));

    Settings settings = SettingsReader.read(file, new Problems()).orElseThrow();

    assertThat(SafetyAdvice.of(settings, LocalDate.of(2026, 10, 1)))
        .singleElement()
        .asString()
        .contains("outputs.curing-heater.line was '7' (on when high) but it may be on while");
  }

  @Test
  void simulatedDriver_isTheSameForAll() {
    Settings shed =
        SettingsReader.read(Path.of("examples/shed.toml"), new Problems()).orElseThrow();

    assertThat(shed.isSimulated()).isTrue();
    assertThat(shed.outputs()).allMatch(output -> output.driver().equals(new Simulated()));
  }

  private List<String> problemsOf(String from, String to) throws IOException {
    String text = Files.readString(EXAMPLE);
    assertThat(text).contains(from);
    int at = text.indexOf(from);
    Path file = folder.resolve("board.toml");
    Files.writeString(file, text.substring(0, at) + to + text.substring(at + from.length()));
    Problems problems = new Problems();
    assertThat(SettingsReader.read(file, problems)).isEmpty();
    return problems.list().stream().map(Problem::toString).toList();
  }
}
