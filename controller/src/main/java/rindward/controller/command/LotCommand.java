package rindward.controller.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code lot}: what people say of the lots, and what came of it. */
@Command(
    name = "lot",
    description = "Bring in a lot, move it, and see what it has lived through.",
    subcommands = {LotAddCommand.class, LotMoveCommand.class, LotShowCommand.class},
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Example:",
      "  rindward lot add --settings shed.toml KB1 --crop kabocha --place curing --count 40"
    })
final class LotCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do, one of: " + String.join(", ", spec.subcommands().keySet()));
  }
}
