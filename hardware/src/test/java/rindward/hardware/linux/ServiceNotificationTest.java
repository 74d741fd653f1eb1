package rindward.hardware.linux;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ServiceNotificationTest {
  private static final long PID = 4711;
  private static final Map<String, String> LISTENING = Map.of("NOTIFY_SOCKET", "/run/notify");
  private static final Map<String, String> WATCHING =
      Map.of("NOTIFY_SOCKET", "/run/notify", "WATCHDOG_USEC", "30000000", "WATCHDOG_PID", "4711");

  @TempDir private Path folder;
  private final List<List<String>> sent = new ArrayList<>();

  private ServiceNotification service(Map<String, String> environment) {
    return new ServiceNotification(environment, PID, sent::add);
  }

  @Test
  void startedByHand_nothingIsSent_andNothingFails() throws IOException {
    ServiceNotification service = service(Map.of());

    service.ready("2 rooms");
    service.alive("2 rooms");
    service.stopping("told to stop");

    assertThat(sent).isEmpty();
    assertThat(service.watchdog()).isEmpty();
  }

  @Test
  void lifeOfAService_isTold() throws IOException {
    ServiceNotification service = service(WATCHING);

    service.ready("observing");
    service.alive("curing 27.5 C");
    service.alive("curing 27.5 C");
    service.stopping("all outputs off");

    assertThat(sent)
        .containsExactly(
            List.of("READY=1", "STATUS=observing"),
            List.of("WATCHDOG=1", "STATUS=curing 27.5 C"),
            List.of("WATCHDOG=1", "STATUS=curing 27.5 C"),
            List.of("STOPPING=1", "STATUS=all outputs off"));
  }

  @Test
  void withoutAWatchdog_onlyAChangedStatusIsWorthAProcess() throws IOException {
    ServiceNotification service = service(LISTENING);

    service.ready("observing");
    service.alive("observing");
    service.alive("heating");

    assertThat(sent)
        .containsExactly(List.of("READY=1", "STATUS=observing"), List.of("STATUS=heating"));
  }

  @Test
  void statusIsOneLine_soThatItCannotBeginAnotherAssignment() throws IOException {
    service(LISTENING).ready("observing\nWATCHDOG=1");

    assertThat(sent).containsExactly(List.of("READY=1", "STATUS=observing WATCHDOG=1"));
  }

  // sd_watchdog_enabled(3): microseconds; counts if WATCHDOG_PID is absent or this process.
  @Test
  void watchdogTime_isInMicroseconds_andOnlyForTheProcessItNames() {
    assertThat(service(WATCHING).watchdog()).contains(Duration.ofSeconds(30));
    assertThat(
            service(Map.of("NOTIFY_SOCKET", "/run/notify", "WATCHDOG_USEC", "500000")).watchdog())
        .contains(Duration.ofMillis(500));
    assertThat(new ServiceNotification(WATCHING, PID + 1, sent::add).watchdog()).isEmpty();
    assertThat(service(Map.of("NOTIFY_SOCKET", "@a", "WATCHDOG_USEC", "soon")).watchdog())
        .isEmpty();
  }

  @Test
  void command_isRunWithTheMessageAndTheSocket() throws IOException {
    Path told = folder.resolve("told");
    NotifyCommand command =
        new NotifyCommand(
            List.of("sh", "-c", "echo \"$NOTIFY_SOCKET $*\" > " + told, "notify"), LISTENING);

    command.send(List.of("WATCHDOG=1", "STATUS=curing 27.5 C"));

    assertThat(told).hasContent("/run/notify WATCHDOG=1 STATUS=curing 27.5 C");
  }

  @Test
  void commandThatFails_isReported() {
    NotifyCommand command = new NotifyCommand(List.of("false"), LISTENING);

    assertThatThrownBy(() -> command.send(List.of("READY=1")))
        .isInstanceOf(IOException.class)
        .hasMessage("false could not send [READY=1] and ended with 1");
  }

  @Test
  void missingCommand_isReported() {
    NotifyCommand command = new NotifyCommand(List.of("no-such-command"), LISTENING);

    assertThatThrownBy(() -> command.send(List.of("READY=1")))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("no-such-command");
  }
}
