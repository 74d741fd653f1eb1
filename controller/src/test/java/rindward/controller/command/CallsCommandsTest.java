package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.command.base.ExitCode;
import rindward.controller.daemon.SimulatedRun;
import rindward.controller.journal.Harvested;
import rindward.controller.settings.Problems;
import rindward.controller.settings.SettingsReader;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.ShedFault.Kind;

/** The commands about calls and alarms, with a real mail server and a real web server. */
class CallsCommandsTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");

  @TempDir private Path folder;
  private final List<String> hooked = new CopyOnWriteArrayList<>();
  private volatile int hookAnswers = 200;
  private Path file;
  private GreenMail mail;
  private HttpServer hook;

  @BeforeEach
  void start() throws IOException {
    mail = new GreenMail(ServerSetup.SMTP.dynamicPort());
    mail.start();
    hook = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    hook.createContext(
        "/",
        exchange -> {
          hooked.add(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
          exchange.sendResponseHeaders(hookAnswers, -1);
          exchange.close();
        });
    hook.start();
    file = folder.resolve("shed.toml");
    Files.writeString(
        file,
        Files.readString(Path.of("examples/shed.toml"))
            + """

            [people.Wren]
            mail = "wren@hollin-bank.example"
            by = ["mail", "webhook"]

            [mail]
            host = "localhost"
            port = %d
            security = "none"
            from = "shed@hollin-bank.example"

            [webhook]
            url = "http://127.0.0.1:%d/shed"
            """
                .formatted(mail.getSmtp().getPort(), hook.getAddress().getPort()));
  }

  @AfterEach
  void stop() {
    hook.stop(0);
    mail.stop();
  }

  @Test
  void aTrialNotice_reachesEverybody_andSaysThatNothingIsWrong() throws Exception {
    CommandRun told = CommandRun.of("tell", "--settings", file.toString());

    assertThat(told.exit()).as(told.out() + told.err()).isZero();
    assertThat(told.out()).contains("Wren by mail: taken.", "Wren by webhook: taken.");
    assertThat(mail.getReceivedMessages()).hasSize(1);
    assertThat(mail.getReceivedMessages()[0].getSubject())
        .isEqualTo("Hollin Bank Farm: a trial notice");
    assertThat(hooked).singleElement().asString().contains("Nothing is wrong");
  }

  @Test
  void aChannelThatRefuses_isNamed_andTheOtherStillTold() {
    hookAnswers = 500;

    CommandRun told = CommandRun.of("tell", "--settings", file.toString());

    assertThat(told.exit()).isEqualTo(ExitCode.NOT_WELL);
    assertThat(told.out()).contains("Wren by mail: taken.", "Wren by webhook: not taken, ");
    assertThat(mail.getReceivedMessages()).hasSize(1);
  }

  @Test
  void alarms_sayWhatToDo_andWhoHasSeenThem() throws Exception {
    assertThat(CommandRun.of("alarms", "--settings", file.toString()).exit()).isZero();
    aNightWithADeadHeater();

    CommandRun open = CommandRun.of("alarms", "--settings", file.toString());
    String word = "heater-without-effect@storage/storage-heater";
    assertThat(open.exit()).isEqualTo(ExitCode.NOT_WELL);
    assertThat(open.out()).contains(word);
    CommandRun seen =
        CommandRun.of("alarms", "--settings", file.toString(), "--seen", word, "--name", "Wren");
    assertThat(seen.exit()).as(seen.out() + seen.err()).isZero();
    assertThat(CommandRun.of("alarms", "--settings", file.toString(), "--seen", "no-such").err())
        .contains("--seen was 'no-such' but no such alarm is open");
  }

  private void aNightWithADeadHeater() throws Exception {
    SimulatedRun rehearsal =
        new SimulatedRun(
            SettingsReader.read(file, new Problems()).orElseThrow(),
            GeneratedWeather.temperate(7),
            START);
    Harvested lot = new Harvested("BN1", "butternut", "Fallow Bell", 200, "storage", START);
    rehearsal.daemon().door().say(lot, "Wren", "a", OptionalLong.empty(), START);
    rehearsal.load("storage", "BN1", 300);
    rehearsal.heed();
    rehearsal.advance(Duration.ofHours(36));
    rehearsal.shed().inject(ShedFault.of(Kind.OUTPUT_DEAD, "storage-heater"));
    rehearsal.advance(Duration.ofMinutes(40));
    rehearsal.daemon().close();
  }
}
