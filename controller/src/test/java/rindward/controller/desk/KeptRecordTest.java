package rindward.controller.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.Recorded;
import rindward.controller.store.Database;
import rindward.controller.store.copies.Copies;
import rindward.dashboard.shed.RecordView.TriedView;

/** What is on record and can be taken away. */
class KeptRecordTest {
  private static final Instant NIGHT = Instant.parse("2026-11-25T03:00:00Z");
  private static final Instant DAY = NIGHT.minusSeconds(36_000);

  private final List<Recorded> journal =
      List.of(
          new Recorded(1, DAY, "Wren", new OutputTried("storage", "heater", "pin 17", DAY)),
          new Recorded(
              2, DAY, "Wren", new Harvested("K4T", "kabocha", "Winterglut", 3, "storage", DAY)),
          new Recorded(3, NIGHT, "Rook", new OutputTried("storage", "heater", "pin 27", NIGHT)));

  @TempDir private Path folder;
  private Database database;
  private Copies copies;
  private KeptRecord record;

  @BeforeEach
  void open() {
    database = new Database(folder.resolve("shed.db"));
    copies = new Copies(database, folder.resolve("backups"), ZoneOffset.UTC);
    record = new KeptRecord(() -> journal, copies, standing -> List.of());
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void copy_isThereOnceOneWasMade_andIsAWholeDatabase() throws IOException {
    assertThat(record.record().copiedAt()).isNull();
    assertThat(record.copy()).isEmpty();

    Path copy = copies.make(NIGHT);

    assertThat(record.record().copiedAt()).isEqualTo(NIGHT);
    assertThat(record.record().copyBytes()).isEqualTo(Files.size(copy));
    try (InputStream read = record.copy().orElseThrow()) {
      assertThat(new String(read.readNBytes(15), StandardCharsets.US_ASCII))
          .isEqualTo("SQLite format 3");
    }
  }

  @Test
  void tried_isEachOutputWithItsLastTime() {
    assertThat(record.record().tried())
        .containsExactly(new TriedView("storage", "heater", NIGHT, "Rook"));
  }

  @Test
  void lots_areTheFileOfLots() {
    assertThat(record.lots().lines()).hasSize(2).last().asString().contains("K4T", "Winterglut");
  }
}
