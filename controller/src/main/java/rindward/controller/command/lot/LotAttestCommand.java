package rindward.controller.command.lot;

import java.time.Instant;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Entry;

/** {@code lot attest}: a lot was seen to have cured. */
@Command(
    name = "attest",
    description =
        "Say that a lot has cured, and how that was seen. It is shown as told, beside what was"
            + " measured.",
    footer = {
      "",
      "Example:",
      "  rindward lot attest --settings shed.toml K4T 'stem dry, rind resists the nail'"
    })
final class LotAttestCommand extends SayingCommand {
  @Parameters(index = "0", paramLabel = "CODE", description = "Code of the lot.")
  private String code = "";

  @Parameters(index = "1", paramLabel = "SEEN", description = "How it looked.")
  private String seen = "";

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    return List.of(new Attested(Farm.code(code), seen, at));
  }
}
