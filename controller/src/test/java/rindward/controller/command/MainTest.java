package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class MainTest {
  @Test
  void everyCommand_explainsItselfWithAnExample() {
    for (CommandLine command : Main.commandLine().getSubcommands().values()) {
      CommandRun run = CommandRun.of(command.getCommandName(), "--help");
      assertThat(run.exit()).isZero();
      assertThat(run.out()).contains("Example").contains("  rindward " + command.getCommandName());
    }
  }

  @Test
  void help_listsTheCommands() {
    CommandRun run = CommandRun.of("--help");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).contains("Commands:", "air ", "Example");
  }

  @Test
  void version_isSaid() {
    CommandRun run = CommandRun.of("--version");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).startsWith("rindward ");
  }

  @Test
  void noCommand_isWrongUsage_inOneSentence() {
    CommandRun run = CommandRun.of();
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("rindward: Say what to do, one of: demo").hasLineCount(1);
  }

  @Test
  void unknownCommand_isWrongUsage_inOneSentence() {
    CommandRun run = CommandRun.of("heat");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).startsWith("rindward: There is no 'heat' here").hasLineCount(1);
  }
}
