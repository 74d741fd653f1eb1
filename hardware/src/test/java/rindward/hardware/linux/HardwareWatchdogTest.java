package rindward.hardware.linux;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HardwareWatchdogTest {
  private static final Duration TICK = Duration.ofSeconds(10);

  @TempDir private Path folder;
  private FakeSysfs sysfs;
  private Path device;

  @BeforeEach
  void board() throws IOException {
    sysfs = new FakeSysfs(folder.resolve("sys")).with("class/watchdog/watchdog0/timeout", "15\n");
    device = Files.createFile(folder.resolve("watchdog"));
  }

  @Test
  void cleanStop_writesTheMagicCharacterLast() throws IOException {
    try (HardwareWatchdog watchdog = HardwareWatchdog.arm(device, sysfs.root(), TICK)) {
      watchdog.feed();
      watchdog.feed();
    }

    assertThat(Files.readString(device)).isEqualTo("\0\0V");
  }

  @Test
  void processThatDies_leavesNoMagicCharacter() throws IOException {
    HardwareWatchdog watchdog = HardwareWatchdog.arm(device, sysfs.root(), TICK);
    watchdog.feed();

    assertThat(Files.readString(device)).isEqualTo("\0");
    watchdog.close();
  }

  // 15 s is the usual time-out of a Raspberry Pi.
  @Test
  void timeoutTooShortForTheTick_isRefused() {
    assertThatThrownBy(() -> HardwareWatchdog.arm(device, sysfs.root(), Duration.ofSeconds(11)))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("was 15 s but it must be at least a tick and 5 s, here 16 s");
  }

  @Test
  void unknownTimeout_isRefused_ratherThanRebootingForever() {
    sysfs.without("class/watchdog/watchdog0/timeout");

    assertThatThrownBy(() -> HardwareWatchdog.arm(device, sysfs.root(), TICK))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("there is no file");
  }

  @Test
  void missingDevice_isRefused_withTheLikelyCause() {
    assertThatThrownBy(() -> HardwareWatchdog.arm(folder.resolve("watchdog0"), sysfs.root(), TICK))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("cannot be opened; another program may hold it");
  }

  @Test
  void kernelThatNeverDisarms_isKnown() throws IOException {
    try (HardwareWatchdog watchdog = HardwareWatchdog.arm(device, sysfs.root(), TICK)) {
      assertThat(watchdog.cannotBeStopped()).isFalse();
    }
    sysfs.with("class/watchdog/watchdog0/nowayout", "1\n");
    try (HardwareWatchdog watchdog = HardwareWatchdog.arm(device, sysfs.root(), TICK)) {
      assertThat(watchdog.cannotBeStopped()).isTrue();
    }
  }
}
