package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.daemon.BoardLock;

/** A copy by hand, and going on from it. */
class BackupCommandsTest {
  @TempDir private Path folder;
  private OwnFarm farm;

  @BeforeEach
  void farm() throws IOException {
    farm = OwnFarm.in(folder);
  }

  @Test
  void restore_withoutACopyNamed_goesBackToTheNewestOne_andKeepsWhatWasThere() throws IOException {
    add("KB1");
    assertThat(farm.done("backup")).contains("Copied to ", "read back and found whole");
    add("KB2");

    String said = farm.done("restore");

    assertThat(said).contains("is now what ", "What was there before is kept as ");
    assertThat(farm.done("lot", "list")).contains("KB1").doesNotContain("KB2");
    assertThat(names(folder)).anyMatch(name -> name.startsWith("rindward.db.replaced-"));
  }

  @Test
  void restore_newestIsDamaged_saysSoAndTakesTheOneBefore() throws IOException {
    add("KB1");
    farm.done("backup");
    Files.writeString(
        folder.resolve("backups/rindward-29990101T000000Z.db"), "not a copy at all ".repeat(99));

    CommandRun run = CommandRun.of("restore", "--settings", farm.settings().toString());

    assertThat(run.exit()).isZero();
    assertThat(run.err()).contains("29990101T000000Z.db cannot be used: it is damaged");
    assertThat(farm.done("lot", "list")).contains("KB1");
  }

  @Test
  void restore_copyFromElsewhere_onABoardThatHasNothing() throws IOException {
    add("KB1");
    farm.done("backup", "--to", folder.resolve("stick").toString());
    String copy = folder.resolve("stick/" + names(folder.resolve("stick")).get(0)).toString();
    OwnFarm other = OwnFarm.in(folder.resolve("other-board"));

    assertThat(other.done("restore", copy)).doesNotContain("What was there before");

    assertThat(other.done("lot", "list")).contains("KB1");
  }

  @Test
  void restore_whileTheDaemonRuns_isRefused() throws IOException {
    add("KB1");
    farm.done("backup");
    try (BoardLock daemon = BoardLock.take(folder.resolve("rindward.db")).orElseThrow()) {
      CommandRun run = CommandRun.of("restore", "--settings", farm.settings().toString());

      assertThat(daemon).isNotNull();
      assertThat(run.exit()).isEqualTo(1);
      assertThat(run.err()).contains("The daemon keeps this database open; stop it first.");
    }
  }

  @Test
  void backup_nothingToCopy_saysSoAndMakesNothing() throws IOException {
    CommandRun run = CommandRun.of("backup", "--settings", farm.settings().toString());

    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err()).contains("There is no database").hasLineCount(1);
    assertThat(names(folder)).containsExactly("shed.toml");
  }

  private void add(String code) {
    String unused =
        farm.done("lot", "add", code, "--crop", "kabocha", "--place", "curing", "--count", "40");
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }
}
