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
import rindward.controller.journal.Used;

/** {@code lot use}: sound fruits were used. */
@Command(
    name = "use",
    description = "Take out sound fruits that are eaten, sold, tasted or kept for seed.",
    footer = {"", "Example:", "  rindward lot use --settings shed.toml K4T --count 2"})
final class LotUseCommand extends SayingCommand {
  @Parameters(paramLabel = "CODE", description = "Code of the lot.")
  private String code = "";

  @Option(names = "--count", description = "How many; 1 if not given.")
  private int count = 1;

  @Option(
      names = "--purpose",
      description = "What for: ${COMPLETION-CANDIDATES}; kitchen if not given.")
  private Purpose purpose = Purpose.KITCHEN;

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    return List.of(new Used(Farm.code(code), count, purpose, at));
  }
}
