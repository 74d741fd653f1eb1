package rindward.controller.command.shed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page beside run: however often it ends, it is started anew, and never outlives its end. */
class PageChildTest {
  @TempDir private Path folder;

  @Test
  void onePageAfterTheOther_isStarted_whateverBecomesOfThem() throws Exception {
    try (PageChild child = child("echo lived >> %s; kill -9 $$")) {
      child.start();
      await().atMost(Duration.ofSeconds(30)).until(() -> lines().size() >= 3);
    }
    assertThat(lines()).containsOnly("lived");
  }

  @Test
  void whatCannotBeStarted_costsNothing_andIsTriedAgain() {
    try (PageChild child = new PageChild(List.of("/no/such/program"), System::nanoTime)) {
      child.start();
    }
  }

  @Test
  void theEnd_endsIt() {
    PageChild child = child("echo lived >> %s; exec sleep 600");
    child.start();
    await().atMost(Duration.ofSeconds(30)).until(() -> lines().size() == 1);
    Process page = Objects.requireNonNull(child.process());
    assertThat(page.isAlive()).isTrue();

    child.close();

    assertThat(page.isAlive()).isFalse();
  }

  @Test
  void thePause_growsToAMinute_andNoFurther() {
    assertThat(PageChild.pause(1)).isEqualTo(Duration.ofSeconds(1));
    assertThat(PageChild.pause(2)).isEqualTo(Duration.ofSeconds(2));
    assertThat(PageChild.pause(6)).isEqualTo(Duration.ofSeconds(32));
    assertThat(PageChild.pause(7)).isEqualTo(Duration.ofMinutes(1));
    assertThat(PageChild.pause(1_000_000)).isEqualTo(Duration.ofMinutes(1));
  }

  @Test
  void itsCommand_isThatOfThisProgram_withLimitsOfItsOwn() {
    assertThat(PageChild.command(Path.of("shed.toml")))
        .contains("-Xmx96m", "page", "--beside-run")
        .endsWith("--settings", Path.of("shed.toml").toAbsolutePath().toString());
  }

  private PageChild child(String script) {
    return new PageChild(
        List.of("sh", "-c", script.formatted(folder.resolve("lives"))), System::nanoTime);
  }

  private List<String> lines() throws IOException {
    Path file = folder.resolve("lives");
    return Files.exists(file) ? Files.readAllLines(file) : List.of();
  }
}
