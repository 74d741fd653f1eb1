package rindward.controller.command.lot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code lot}: what people say of the lots, and what came of it. */
@Command(
    name = "lot",
    description = "Bring in lots, say what becomes of them, and see what they have lived through.",
    subcommands = {
      LotBringInCommand.class,
      LotAddCommand.class,
      LotListCommand.class,
      LotShowCommand.class,
      LotMoveCommand.class,
      LotWeighCommand.class,
      LotCullCommand.class,
      LotUseCommand.class,
      LotRecountCommand.class,
      LotNoteCommand.class,
      LotAttestCommand.class,
      LotLiftCommand.class,
      LotReserveCommand.class,
      LotUndoCommand.class,
      LotCorrectCommand.class,
      LotImportCommand.class,
      LotExportCommand.class,
      LotLabelsCommand.class,
      LotWalkSheetCommand.class
    },
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Example:",
      "  rindward lot add --settings shed.toml KB1 --crop kabocha --place curing --count 40"
    })
public final class LotCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do, one of: " + String.join(", ", spec.subcommands().keySet()));
  }
}
