package rindward.controller.command.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the demo keeps for its next start. */
class DemoCacheTest {
  private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");

  @TempDir private Path folder;

  @Test
  void keptToday_isFoundAgain_andOnlyTheNewestStays() throws Exception {
    DemoCache cache = new DemoCache(folder.resolve("cache"), "demo-1-");
    Path database = Files.writeString(folder.resolve("rindward.db"), "history");
    cache.keep(database, NOW.minus(Duration.ofHours(9)));
    cache.keep(database, NOW.minus(Duration.ofHours(2)));

    assertThat(cache.find(NOW))
        .hasValueSatisfying(
            kept -> {
              assertThat(kept.end()).isEqualTo(NOW.minus(Duration.ofHours(2)));
              assertThat(kept.file()).hasContent("history");
            });
    assertThat(folder.resolve("cache")).isDirectoryContaining("glob:**demo-1-*.db");
    try (var files = Files.list(folder.resolve("cache"))) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void keptYesterday_orByAnotherBuild_orFromTheFuture_isNotUsed() throws Exception {
    Path database = Files.writeString(folder.resolve("rindward.db"), "history");
    DemoCache cache = new DemoCache(folder, "demo-1-");
    cache.keep(database, NOW.minus(Duration.ofHours(21)));
    assertThat(cache.find(NOW)).isEmpty();

    cache.keep(database, NOW.plus(Duration.ofHours(1)));
    assertThat(cache.find(NOW)).isEmpty();

    cache.keep(database, NOW);
    assertThat(new DemoCache(folder, "demo-2-").find(NOW)).isEmpty();
  }
}
