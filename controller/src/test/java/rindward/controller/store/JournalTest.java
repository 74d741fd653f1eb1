package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rindward.controller.store.AppendResult.Appended;
import rindward.controller.store.AppendResult.Conflict;

/** Nothing a person entered is lost, doubled or overwritten unseen. */
class JournalTest {
  @RegisterExtension final OwnDatabase own = new OwnDatabase();

  @Test
  void since_returnsEntriesInOrderAsTheyWereMade() {
    Journal journal = new Journal(own.database());
    AppendResult first = append(journal, "r1", "lot-1", OptionalLong.of(0));
    AppendResult second = append(journal, "r2", "lot-2", OptionalLong.of(0));

    assertThat(first)
        .isEqualTo(
            new Appended(new StoredEntry(1, "r1", "lot-1", 1_000, "Ada", "{\"kg\":3}"), false));
    assertThat(entries(journal, 0))
        .containsExactly(((Appended) first).entry(), ((Appended) second).entry());
    assertThat(entries(journal, 1)).containsExactly(((Appended) second).entry());
    assertThat(entries(journal, 2)).isEmpty();
  }

  @Test
  void append_retry_returnsTheFirstResultEvenAfterOthersWrote() {
    Journal journal = new Journal(own.database());
    Appended first = (Appended) append(journal, "r1", "lot-1", OptionalLong.of(0));
    append(journal, "r2", "lot-1", OptionalLong.of(1));

    AppendResult retry = append(journal, "r1", "lot-1", OptionalLong.of(0));

    assertThat(retry).isEqualTo(new Appended(first.entry(), true));
    assertThat(entries(journal, 0)).hasSize(2);
  }

  @Test
  void append_subjectChangedMeanwhile_isAConflictThatShowsTheChange() {
    Journal journal = new Journal(own.database());
    append(journal, "r1", "lot-1", OptionalLong.of(0));
    Appended unseen = (Appended) append(journal, "r2", "lot-1", OptionalLong.of(1));

    assertThat(append(journal, "r3", "lot-1", OptionalLong.of(1)))
        .isEqualTo(new Conflict(unseen.entry()));
    assertThat(append(journal, "r4", "lot-9", OptionalLong.of(1))).isEqualTo(new Conflict(null));
    assertThat(entries(journal, 0)).hasSize(2);
  }

  @Test
  void append_withoutExpectation_appendsWhateverHappened() {
    Journal journal = new Journal(own.database());
    append(journal, "r1", "lot-1", OptionalLong.of(0));
    assertThat(append(journal, "r2", "lot-1", OptionalLong.empty())).isInstanceOf(Appended.class);
  }

  @Test
  void append_committed_survivesAPowerCutAndWhatIsNotDoesNotShow() throws IOException {
    Database database = own.database();
    Journal journal = new Journal(database);
    append(journal, "r1", "lot-1", OptionalLong.of(0));
    Path copy =
        database.write(
            connection -> {
              RoomIds.idOf(connection, "half-way");
              try {
                return own.copyAsLeftByPowerCut();
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });

    Database after = own.database(copy);

    assertThat(entries(new Journal(after), 0)).isEqualTo(entries(journal, 0)).hasSize(1);
    assertThat(after.<Long>read(c -> RoomIds.find(c, "half-way"))).isZero();
  }

  @Test
  void append_processKilled_keepsEveryAcknowledgedEntry() throws Exception {
    List<Long> acknowledged = new ArrayList<>();
    Process other = startWriter("killed", 1_000_000);
    try (BufferedReader lines = other.inputReader(StandardCharsets.UTF_8)) {
      while (acknowledged.size() < 20) {
        acknowledged.add(Long.valueOf(lines.readLine()));
      }
      other.destroyForcibly().waitFor();
    }

    assertThat(entries(new Journal(own.database()), 0).stream().map(StoredEntry::id))
        .containsAll(acknowledged);
  }

  @Test
  void append_twoProcessesAtOnce_losesNothing() throws Exception {
    Database database = new Database(own.file(), Duration.ofSeconds(10));
    try (database) {
      database.open();
      Process other = startWriter("other", 100);
      Journal journal = new Journal(database);
      for (int i = 0; i < 100; i++) {
        append(journal, "here-" + i, "lot-1", OptionalLong.empty());
      }
      other.inputReader(StandardCharsets.UTF_8).lines().forEach(line -> {});
      assertThat(other.waitFor()).isZero();

      assertThat(entries(journal, 0).stream().map(StoredEntry::id))
          .hasSize(200)
          .isSorted()
          .doesNotHaveDuplicates();
    }
  }

  private Process startWriter(String name, int count) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            JournalWriter.class.getName(),
            own.file().toString(),
            name,
            String.valueOf(count))
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  private static AppendResult append(
      Journal journal, String request, String subject, OptionalLong expectedLastId) {
    return journal.append(request, subject, expectedLastId, 1_000, "Ada", "{\"kg\":3}");
  }

  private static List<StoredEntry> entries(Journal journal, long since) {
    List<StoredEntry> entries = new ArrayList<>();
    journal.since(since, entries::add);
    return entries;
  }
}
