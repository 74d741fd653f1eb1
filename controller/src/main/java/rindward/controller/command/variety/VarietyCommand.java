package rindward.controller.command.variety;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code variety}: what to grow again. */
@Command(
    name = "variety",
    description = "Judge the varieties that were grown, and write down what is decided.",
    subcommands = {
      VarietyShowCommand.class,
      VarietyDecideCommand.class,
      VarietyOrderCommand.class,
      VarietyReportCommand.class
    },
    synopsisSubcommandLabel = "COMMAND",
    footer = {"", "Example:", "  rindward variety show --settings shed.toml Winterglut"})
public final class VarietyCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do, one of: " + String.join(", ", spec.subcommands().keySet()));
  }
}
