package rindward.controller.command.lot;

import java.time.Instant;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Recounted;

/** {@code lot recount}: somebody counted. */
@Command(
    name = "recount",
    description = "Say how many sound fruits are there; what is missing shows as unaccounted.",
    footer = {"", "Example:", "  rindward lot recount --settings shed.toml K4T --count 36"})
final class LotRecountCommand extends SayingCommand {
  @Parameters(paramLabel = "CODE", description = "Code of the lot.")
  private String code = "";

  @Option(names = "--count", required = true, description = "Sound fruits there.")
  private int count;

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    return List.of(new Recounted(Farm.code(code), count, at));
  }
}
