package rindward.controller.command.lot;

import java.time.Instant;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Reserved;

/** {@code lot reserve}: fruits are set aside. */
@Command(
    name = "reserve",
    description =
        "Set fruits aside; nothing offers them to the kitchen. Replaces what was set aside for the"
            + " same purpose; 0 sets them free.",
    footer = {
      "",
      "Example:",
      "  rindward lot reserve --settings shed.toml K4T --purpose panel --count 3"
    })
final class LotReserveCommand extends SayingCommand {
  @Parameters(paramLabel = "CODE", description = "Code of the lot.")
  private String code = "";

  @Option(names = "--purpose", required = true, description = "What for: ${COMPLETION-CANDIDATES}.")
  private Purpose purpose = Purpose.PANEL;

  @Option(names = "--count", required = true, description = "How many in all.")
  private int count;

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    return List.of(new Reserved(Farm.code(code), purpose, count, at));
  }
}
