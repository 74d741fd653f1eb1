package rindward.controller.command.lot;

import java.time.Instant;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Entry;

/** {@code lot cull}: fruits were lost. */
@Command(
    name = "cull",
    description =
        "Take out fruits that are lost. One eaten because it was failing is lost too:"
            + " --cause eaten-failing.",
    footer = {"", "Example:", "  rindward lot cull --settings shed.toml K4T --cause soft"})
final class LotCullCommand extends SayingCommand {
  @Parameters(paramLabel = "CODE", description = "Code of the lot.")
  private String code = "";

  @Option(names = "--count", description = "How many; 1 if not given.")
  private int count = 1;

  @Option(names = "--cause", required = true, description = "Why: ${COMPLETION-CANDIDATES}.")
  private Cause cause = Cause.OTHER;

  @Option(names = "--note", description = "What was seen.")
  private String note = "";

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    return List.of(new Culled(Farm.code(code), count, cause, note, at));
  }
}
