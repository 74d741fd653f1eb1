package rindward.hardware.wired;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.hardware.Reading;
import rindward.hardware.Relay;
import rindward.hardware.pi4j.ActiveLevel;
import rindward.hardware.pi4j.RecordedLines;
import rindward.hardware.wired.KernelDriver.Door;
import rindward.hardware.wired.WiredBoard.Input;
import rindward.hardware.wired.WiredBoard.Output;

/** The real board on Pi4J's mock lines and a folder of files that stands in for sysfs. */
class WiredBoardTest {
  @TempDir private Path sysfs;
  private final RecordedLines lines = new RecordedLines();

  private static final Output HEATER = new Output("heater", new GpioDriver(17, ActiveLevel.HIGH));
  private static final Output FAN = new Output("fan", new GpioDriver(5, ActiveLevel.LOW));
  private static final Input AIR =
      new Input("air", new KernelDriver(Door.HWMON, "sht3x"), Offset.NONE);

  @Test
  void open_bringsUpEveryOutputOff_andCloseDrivesThemOff() throws IOException {
    WiredBoard board = open(List.of(HEATER, FAN), List.of());
    assertThat(lines.asked).containsExactly("17 starts LOW ends LOW", "5 starts HIGH ends HIGH");
    Relay heater = board.relay("heater");
    heater.set(true);
    lines.driven.clear();

    board.close();
    board.close();

    assertThat(lines.driven).contains("17 LOW", "5 HIGH").doesNotContain("17 HIGH", "5 LOW");
    assertThatThrownBy(() -> heater.set(true)).hasMessageContaining("stays off");
  }

  @Test
  void open_outputThatCannotBeOpened_isAReasonNotToStart_andTheOthersAreOff() {
    Output second = new Output("exhaust", new GpioDriver(17, ActiveLevel.HIGH));

    assertThatThrownBy(() -> open(List.of(HEATER, second), List.of()))
        .isInstanceOf(IOException.class)
        .hasMessage("gpio of relay exhaust was 17 but it must not be that of relay heater too");
    assertThat(lines.driven).isNotEmpty().containsOnly("17 LOW");
  }

  @Test
  void open_probeThatCannotBeOpened_costsOnlyItself() throws IOException {
    hwmon("21500", "63000");
    Input broken = new Input("pulp", new OneWireDriver("10-000000000000"), Offset.NONE);

    try (WiredBoard board = open(List.of(), List.of(broken, AIR))) {
      assertThat(board.probe("air").read()).isEqualTo(new Reading(21_500, 63_000));
      assertThatThrownBy(() -> board.probe("pulp").read())
          .hasMessageContaining("serial of probe pulp was '10-000000000000'");
    }
  }

  @Test
  void offset_isAddedToWhatTheProbeSays_andHumidityStaysPossible() throws IOException {
    hwmon("21500", "99000");
    Input off = new Input("air", AIR.driver(), new Offset(-300, 2_000));

    try (WiredBoard board = open(List.of(), List.of(off))) {
      assertThat(board.probe("air").read()).isEqualTo(new Reading(21_200, 100_000));
    }
  }

  @Test
  void offset_doesNotMakeAnImpossibleHumidityPossible() {
    assertThat(new Offset(0, -5_000, 1_100_000).corrected(new Reading(20_000, 50_000)))
        .isEqualTo(new Reading(20_000, 50_000));
    assertThat(new Offset(0, -5_000, 1_100_000).corrected(new Reading(20_000, 70_000)))
        .isEqualTo(new Reading(20_000, 72_000));
    assertThat(new Offset(0, -10_000).corrected(new Reading(20_000, 105_000)))
        .isEqualTo(new Reading(20_000, 105_000));
  }

  @Test
  void unknownName_isAnsweredWithThoseThatAre() throws IOException {
    try (WiredBoard board = open(List.of(HEATER, FAN), List.of())) {
      assertThatThrownBy(() -> board.relay("heather"))
          .hasMessage("output was 'heather' but it must be one of heater, fan");
    }
  }

  @Test
  void open_simulatedOutput_isRefused() {
    assertThatThrownBy(() -> open(List.of(new Output("heater", new Simulated())), List.of()))
        .hasMessage("output heater is simulated and hangs on no board");
  }

  private WiredBoard open(List<Output> outputs, List<Input> inputs) throws IOException {
    LinuxMachine machine = new LinuxMachine(sysfs, () -> 0L, () -> Instant.EPOCH, lines::open);
    return WiredBoard.open(machine, null, outputs, inputs);
  }

  private void hwmon(String temperature, String humidity) throws IOException {
    Path device = Files.createDirectories(sysfs.resolve("class/hwmon/hwmon0"));
    Files.writeString(device.resolve("name"), "sht3x\n");
    Files.writeString(device.resolve("temp1_input"), temperature + "\n");
    Files.writeString(device.resolve("humidity1_input"), humidity + "\n");
  }
}
