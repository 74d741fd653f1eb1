package rindward.hardware.pi4j;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.hardware.Relay;

/** GPIO relays on Pi4J's mock lines. */
class GpioLinesTest {
  private final RecordedLines recorded = new RecordedLines();

  private GpioLines lines() throws IOException {
    return recorded.open();
  }

  @ParameterizedTest
  @CsvSource({"HIGH, LOW, HIGH", "LOW, HIGH, LOW"})
  void relay_isOffFromTheMomentItIsAnOutput_switches_andEndsOff(
      ActiveLevel level, String off, String on) throws IOException {
    try (GpioLines lines = lines()) {
      Relay heater = lines.relay("heater", 17, level);
      assertThat(recorded.asked).containsExactly("17 starts " + off + " ends " + off);
      assertThat(recorded.driven).containsOnly("17 " + off);

      recorded.driven.clear();
      heater.set(true);
      heater.set(false);
      heater.set(true);
      assertThat(recorded.driven).containsExactly("17 " + on, "17 " + off, "17 " + on);
      recorded.driven.clear();
    }

    assertThat(recorded.driven).isNotEmpty().containsOnly("17 " + off);
  }

  @Test
  void sameCommandAgain_drivesTheLineAgain() throws IOException {
    try (GpioLines lines = lines()) {
      Relay fan = lines.relay("fan", 17, ActiveLevel.HIGH);
      recorded.driven.clear();

      fan.set(false);
      fan.set(false);

      assertThat(recorded.driven).containsExactly("17 LOW", "17 LOW");
    }
  }

  @Test
  void closedRelay_staysOff_whoeverStillHoldsIt() throws IOException {
    GpioLines lines = lines();
    Relay heater = lines.relay("heater", 17, ActiveLevel.HIGH);
    heater.set(true);
    lines.close();
    recorded.driven.clear();

    assertThatThrownBy(() -> heater.set(true))
        .isInstanceOf(IOException.class)
        .hasMessage("relay heater stays off: its board is closed");
    heater.set(false);
    lines.close();

    assertThat(recorded.driven).isEmpty();
  }

  @Test
  void lineThatFails_isReported_andDoesNotKeepTheOthersOn() throws IOException {
    GpioLines lines = lines();
    Relay heater = lines.relay("heater", 17, ActiveLevel.HIGH);
    Relay fan = lines.relay("fan", 22, ActiveLevel.HIGH);
    heater.set(true);
    fan.set(true);
    recorded.broken.add(17);

    assertThatThrownBy(() -> heater.set(false))
        .isInstanceOf(IOException.class)
        .hasMessage("relay heater on GPIO 17 could not be switched off: line is gone");
    recorded.driven.clear();

    assertThatThrownBy(lines::close).hasMessageContaining("relay heater on GPIO 17");
    assertThat(recorded.driven).contains("22 LOW").doesNotContain("22 HIGH");
  }

  @Test
  void lineGivenTwice_orOffTheHeader_isRefused() throws IOException {
    try (GpioLines lines = lines()) {
      lines.relay("heater", 17, ActiveLevel.HIGH);

      assertThatThrownBy(() -> lines.relay("fan", 17, ActiveLevel.HIGH))
          .isInstanceOf(IOException.class)
          .hasMessage("gpio of relay fan was 17 but it must not be that of relay heater too");
      assertThatThrownBy(() -> lines.relay("fan", 28, ActiveLevel.HIGH))
          .hasMessage("gpio of relay fan was 28 but it must be 0 to 27");
    }
  }

  @Test
  void lineHeldByAnotherProgram_isReported() throws IOException {
    try (GpioLines lines = lines()) {
      recorded.broken.add(17);

      assertThatThrownBy(() -> lines.relay("heater", 17, ActiveLevel.HIGH))
          .isInstanceOf(IOException.class)
          .hasMessage(
              "relay heater cannot have GPIO 17 (line is gone);"
                  + " it needs a Raspberry Pi and a line that no other program holds");
    }
  }

  // BCM2835 ARM Peripherals, p. 102: GPIO 0 to 8 pulled up at reset, 9 to 27 down.
  @ParameterizedTest
  @CsvSource({
    "8, HIGH, true", "8, LOW, false", "9, HIGH, false", "9, LOW, true",
    "14, HIGH, true", "14, LOW, true", "17, HIGH, false", "27, LOW, true"
  })
  void relayThatMayBeOnAtBoot_isKnown(int gpio, ActiveLevel level, boolean mayBeOn) {
    assertThat(level.mayBeOnAtBoot(gpio)).isEqualTo(mayBeOn);
  }

  @Test
  void otherMachine_saysWhereGpioWorks() {
    assumeFalse(Files.exists(Path.of("/proc/device-tree/model")), "a board, perhaps with GPIO");

    assertThatThrownBy(
            () -> {
              try (GpioLines lines = GpioLines.open()) {
                lines.relay("heater", 17, ActiveLevel.HIGH);
              }
            })
        .isInstanceOf(IOException.class)
        .hasMessageContaining("Raspberry Pi");
  }
}
