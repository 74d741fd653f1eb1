package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.sun.net.httpserver.HttpServer;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.journal.Harvested;
import rindward.controller.link.ControlReport;
import rindward.controller.settings.Problems;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.controller.store.Journal;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;

/**
 * A page that holds the record, as long as it likes: the shed goes on, sixty times faster than life
 * and on threads of its own, ticks are on time, and somebody is called. The network and the disk
 * take real time.
 */
class HeldRecordScenarioTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");
  private static final Duration LONG = Duration.ofSeconds(60);

  @TempDir private Path folder;
  private final List<String> calls = new CopyOnWriteArrayList<>();
  private final List<ControlReport> reports = new CopyOnWriteArrayList<>();
  private HttpServer phone;
  private SimulatedRun shed;

  @BeforeEach
  void aShedThatCalls() throws Exception {
    phone = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    phone.createContext(
        "/",
        call -> {
          calls.add(new String(call.getRequestBody().readAllBytes()));
          call.sendResponseHeaders(204, -1);
          call.close();
        });
    phone.start();
    Path file = folder.resolve("shed.toml");
    Files.writeString(
        file,
        Files.readString(Path.of("examples/shed.toml"))
            + """

            [webhook]
            url = "http://127.0.0.1:%d/"

            [people.Wren]
            by = ["webhook"]
            """
                .formatted(phone.getAddress().getPort()));
    shed =
        new SimulatedRun(
            SettingsReader.read(file, new Problems()).orElseThrow(),
            GeneratedWeather.temperate(7),
            START);
    shed.daemon()
        .door()
        .say(
            new Harvested("BN1", "butternut", "", 200, "storage", START),
            "Wren",
            "a",
            OptionalLong.empty(),
            START);
    shed.load("storage", "BN1", 300);
    shed.advance(Duration.ofHours(12));
    shed.daemon().view().eachReport(reports::add);
    shed.shed().inject(ShedFault.of(ShedFault.Kind.PROBE_SILENT, "storage-air"));
  }

  @AfterEach
  void close() {
    shed.daemon().close();
    phone.stop(0);
  }

  @Test
  void aTransactionThatIsNeverEnded_holdsNothingUpButTheRecord() throws Exception {
    try (Connection held = connection();
        Statement sql = held.createStatement()) {
      sql.execute("BEGIN IMMEDIATE");
      shed.live(60);
      somebodyIsCalled();
      await().atMost(LONG).until(() -> !newest().store().isFine());
      assertThat(newest().store().sentence()).contains("keeps it locked");
      everyTickWasOnTime();
      sql.execute("ROLLBACK");
      await().atMost(LONG).until(() -> newest().store().isFine());
    }
    assertThat(newest().store().lostSamples()).isZero();
  }

  @Test
  void aReaderThatNeverEnds_andAFloodOfEntries_costNoTick() throws Exception {
    try (Connection held = connection();
        Statement sql = held.createStatement();
        ResultSet row = begun(sql)) {
      assertThat(row.next()).isTrue();
      shed.live(60);
      try (Database page = new Database(folder.resolve("rindward.db"))) {
        Journal journal = new Journal(page);
        for (int i = 0; i < 3_000; i++) {
          journal.append(
              "flood-" + i, "hand storage", OptionalLong.empty(), 0, "x", "{\"kind\":\"" + i);
        }
      }
      somebodyIsCalled();
      everyTickWasOnTime();
    }
  }

  @Test
  void aRecordThatIsOverwritten_costsTheRecordOnly() throws Exception {
    shed.daemon().flush();
    byte[] noise = new byte[64 * 1024];
    for (String name : List.of("rindward.db", "rindward.db-wal")) {
      if (Files.exists(folder.resolve(name))) {
        Files.write(folder.resolve(name), noise);
      }
    }
    shed.live(60);

    somebodyIsCalled();
    everyTickWasOnTime();
  }

  private void somebodyIsCalled() {
    await()
        .atMost(LONG)
        .until(() -> calls.stream().anyMatch(text -> text.contains("Nothing holds this room")));
  }

  private void everyTickWasOnTime() {
    assertThat(reports.size()).isGreaterThan(10);
    for (int i = 1; i < reports.size(); i++) {
      Duration gap =
          Duration.between(reports.get(i - 1).snapshot().at(), reports.get(i).snapshot().at());
      // Whoever waits for a lock of the record waits for five minutes of this shed.
      assertThat(gap).isLessThan(Duration.ofMinutes(1));
    }
  }

  private ControlReport newest() {
    return reports.get(reports.size() - 1);
  }

  private static ResultSet begun(Statement sql) throws Exception {
    sql.execute("BEGIN");
    return sql.executeQuery("SELECT id FROM entry");
  }

  private Connection connection() throws Exception {
    return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("rindward.db"));
  }
}
