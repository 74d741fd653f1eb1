package rindward.controller.command.panel;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code panel}: people taste fruits side by side and do not know which is which. */
@Command(
    name = "panel",
    description =
        "Plan a tasting of several fruits, print its sheets, write down what was cooked and scored,"
            + " and see what it says.",
    subcommands = {
      PanelLotsCommand.class,
      PanelPlanCommand.class,
      PanelSheetCommand.class,
      PanelCookCommand.class,
      PanelScoreCommand.class,
      PanelUndoCommand.class,
      PanelCloseCommand.class,
      PanelResultsCommand.class
    },
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Example:",
      "  rindward panel plan --settings shed.toml winter --sample K4T --sample R7A --taster Wren"
    })
public final class PanelCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do, one of: " + String.join(", ", spec.subcommands().keySet()));
  }
}
