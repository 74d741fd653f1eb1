package rindward.controller.command.shed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.command.CommandRun;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.demo.DemoCommand;

class RoomCommandTest {
  @TempDir Path folder;

  @BeforeEach
  void shed() throws IOException {
    try (InputStream in = DemoCommand.class.getResourceAsStream("shed.toml")) {
      Files.copy(in, folder.resolve("shed.toml"));
    }
  }

  @Test
  void whatIsAskedOfARoom_isKept_andTakenBack() {
    assertThat(room("storage").out())
        .isEqualTo("Room storage is to have 10 to 13 C and 50 to 70 %, as its settings say.\n");
    assertThat(room("storage", "--temperature", "12..15.5", "--humidity", "55..65").out())
        .isEqualTo("Room storage is to have 12 to 15.5 C and 55 to 65 %.\n");
    assertThat(room("storage", "--rest").out()).isEqualTo("Room storage rests.\n");
    assertThat(room("storage", "--as-set").out()).contains("10 to 13 C", "as its settings say");
  }

  @Test
  void whatCannotBeAsked_isRefusedWithOneSentence() {
    assertThat(room("cellar").err())
        .contains("ROOM was 'cellar' but it must be one of the settings: curing, storage");
    assertThat(room("storage", "--temperature", "12..50", "--humidity", "55..65").err())
        .isEqualTo("temperature was '12.0..50.0' but it must lie within -5..45 C\n");
    assertThat(room("storage", "--temperature", "12..15").exit()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(room("storage", "--rest", "--as-set").exit()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(room("storage").out()).contains("as its settings say");
  }

  private CommandRun room(String... args) {
    List<String> line = new ArrayList<>(List.of("room", "--settings"));
    line.add(folder.resolve("shed.toml").toString());
    line.addAll(List.of(args));
    return CommandRun.of(line.toArray(String[]::new));
  }
}
