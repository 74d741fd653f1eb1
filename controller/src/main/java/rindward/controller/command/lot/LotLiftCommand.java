package rindward.controller.command.lot;

import java.time.Instant;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Entry;
import rindward.controller.journal.HarmLifted;

/** {@code lot lift}: a lot that was stopped may be eaten after all. */
@Command(
    name = "lift",
    description =
        "Lift the stop of a lot in which something harmful was found. Only the owner does, and the"
            + " reason is kept. What is found later stops it again.",
    footer = {
      "",
      "Example:",
      "  rindward lot lift --settings shed.toml K4T 'wrong lot: it was the ornamental gourd'"
    })
final class LotLiftCommand extends SayingCommand {
  @Parameters(index = "0", paramLabel = "CODE", description = "Code of the lot.")
  private String code = "";

  @Parameters(index = "1", paramLabel = "REASON", description = "Why it may be eaten after all.")
  private String reason = "";

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    String lot = lot(farm, code).code();
    if (lot(farm, code).harms().isEmpty()) {
      throw wrong("CODE was '" + lot + "' but nothing harmful was found in that lot");
    }
    return List.of(new HarmLifted(lot, reason, at));
  }
}
