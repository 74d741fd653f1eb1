package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Control shares its fate with nobody: whatever becomes of the page, and the other way round. */
class TwoProcessesIT {
  private static final Duration LONG = Duration.ofSeconds(90);

  @TempDir private Path folder;
  private TwoProcesses shed;

  @AfterEach
  void close() throws Exception {
    shed.close();
  }

  @Test
  void control_opensNoPort_andThePageBesideItOpensOne() throws Exception {
    Process run = running("1s");

    assertThat(TwoProcesses.listening(run.pid())).isEmpty();
    assertThat(TwoProcesses.listening(page(run).pid())).containsExactly(shed.port());
  }

  @Test
  void thePageKilledAndStopped_controlMissesNoTick_andThePageComesBack() throws Exception {
    Process run = running("1s");
    ProcessHandle first = page(run);

    TwoProcesses.signal(first.pid(), "KILL");
    await().atMost(LONG).until(() -> TwoProcesses.pageOf(run).isPresent() && shed.isWell());
    assertThat(page(run).pid()).isNotEqualTo(first.pid());

    TwoProcesses.signal(page(run).pid(), "STOP");
    boolean unused = run.waitFor(20, TimeUnit.SECONDS);
    TwoProcesses.signal(page(run).pid(), "CONT");

    await().atMost(LONG).until(shed::isWell);
    assertThat(shed.meter("rindward_tick_overruns_total")).isZero();
    assertThat(shed.meter("rindward_ticks_total")).isGreaterThan(20);
  }

  /** The tick is 10 s: without a word from the page it would take as long. */
  @Test
  void whatAHandSwitches_isInForceWithinASecond() throws Exception {
    Process run = running("10s");
    shed.signIn();
    Instant said = Instant.now();
    assertThat(
            shed.post(
                    "/api/shed/commands",
                    "{\"room\":\"storage\",\"kind\":\"circulation\",\"on\":false,\"until\":\"%s\"}"
                        .formatted(said.plusSeconds(600)))
                .statusCode())
        .isEqualTo(201);

    await().atMost(Duration.ofSeconds(2)).until(() -> reason().contains("by hand"));
    assertThat(Instant.parse(shed.get("/api/now").at("/at").asText()))
        .as("looked at anew for it")
        .isBefore(said.plusMillis(1_500));
    assertThat(run.isAlive()).isTrue();
  }

  @Test
  void runKilled_takesItsPageWithIt() throws Exception {
    Process run = running("1s");
    ProcessHandle page = page(run);

    TwoProcesses.signal(run.pid(), "KILL");

    await().atMost(LONG).until(() -> !page.isAlive());
  }

  @Test
  void withControlGone_thePageSaysSo_showsTheRecord_andSwitchesNothingOn() throws Exception {
    shed = new TwoProcesses(folder, "1s");
    Process control = shed.start("run", "--without-page");
    shed.start("page");
    await().atMost(LONG).until(shed::isWell);
    assertThat(TwoProcesses.pageOf(control)).isEmpty();
    shed.signIn();

    control.destroy();
    assertThat(control.waitFor(10, TimeUnit.SECONDS)).isTrue();
    await().atMost(LONG).until(() -> health().startsWith("Control has not answered for"));

    assertThat(shed.get("/api/lots?all=true").path("lots").isArray()).isTrue();
    assertThat(shed.get("/api/rooms/storage/climate?hours=1").isMissingNode()).isFalse();
    assertThat(
            shed.post(
                    "/api/shed/commands",
                    "{\"room\":\"storage\",\"kind\":\"circulation\",\"on\":true,\"until\":\"%s\"}"
                        .formatted(Instant.now().plusSeconds(600)))
                .statusCode())
        .isEqualTo(409);

    shed.start("run", "--without-page");
    await().atMost(LONG).until(shed::isWell);
  }

  @Test
  void aPageThatComesFirst_waitsForControl() throws Exception {
    shed = new TwoProcesses(folder, "1s");
    Process page = shed.start("page");
    await().atMost(LONG).until(() -> shed.said().contains("The page waits"));
    assertThat(shed.store()).doesNotExist();

    shed.start("run", "--without-page");

    await().atMost(LONG).until(shed::isWell);
    assertThat(page.isAlive()).isTrue();
  }

  private Process running(String tick) throws IOException {
    shed = new TwoProcesses(folder, tick);
    Process run = shed.start("run");
    await().atMost(LONG).until(shed::isWell);
    return run;
  }

  private static ProcessHandle page(Process run) {
    return TwoProcesses.pageOf(run).orElseThrow();
  }

  private String health() throws IOException {
    return shed.get("/api/now").at("/health").asText();
  }

  private String reason() throws IOException {
    for (JsonNode output : shed.get("/api/now").at("/rooms/1/outputs")) {
      if (output.path("kind").asText().equals("circulation")) {
        return output.path("reason").asText();
      }
    }
    return "";
  }
}
