package rindward.hardware.linux;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class ServiceNotificationTest {
  private static final long PID = 4711;
  private static final Map<String, String> LISTENING = Map.of("NOTIFY_SOCKET", "/run/notify");
  private static final Map<String, String> WATCHING =
      Map.of("NOTIFY_SOCKET", "/run/notify", "WATCHDOG_USEC", "30000000", "WATCHDOG_PID", "4711");

  /** A Unix datagram socket in place of the service manager's; Java 17 has none of its own. */
  private static final String LISTENER =
      "use IO::Socket::UNIX; $| = 1;"
          + " my $s = IO::Socket::UNIX->new(Type => SOCK_DGRAM, Local => $ARGV[0]) or die $!;"
          + " print \"listening\\n\";"
          + " while (defined $s->recv(my $m, 4096)) { $m =~ s/\\n/ | /g; print \"$m\\n\"; }";

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

  @Test
  @Timeout(60)
  void realCommand_sendsEachWordToTheSocketInOneDatagram() throws IOException {
    Path perl = Path.of("/usr/bin/perl");
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/systemd-notify")), "no systemd-notify here");
    assumeTrue(Files.isExecutable(perl), "no perl here");
    Path socket = folder.resolve("notify");
    Process listener =
        new ProcessBuilder(perl.toString(), "-e", LISTENER, socket.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (BufferedReader heard = listener.inputReader()) {
      assertThat(heard.readLine()).isEqualTo("listening");
      Map<String, String> environment =
          Map.of("NOTIFY_SOCKET", socket.toString(), "WATCHDOG_USEC", "30000000");
      ServiceNotification service = ServiceNotification.of(environment, PID);

      service.ready("observing");
      service.alive("curing 27.5 C");
      service.stopping("Everything is switched off.");

      assertThat(word(heard)).isEqualTo("READY=1 | STATUS=observing");
      assertThat(word(heard)).isEqualTo("WATCHDOG=1 | STATUS=curing 27.5 C");
      assertThat(word(heard)).isEqualTo("STOPPING=1 | STATUS=Everything is switched off.");
    } finally {
      listener.destroyForcibly();
    }
  }

  /** The command also asks whether its word has arrived, which is no word of ours. */
  private static String word(BufferedReader heard) throws IOException {
    String line = heard.readLine();
    while (line != null && line.startsWith("BARRIER=1")) {
      line = heard.readLine();
    }
    assertThat(line).isNotNull();
    return line.strip().replaceAll(" \\|$", "");
  }
}
