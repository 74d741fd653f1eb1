package rindward.controller.command.lot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SheetFile;
import rindward.controller.exchange.LotFile;
import rindward.controller.lot.Lots;
import rindward.controller.store.Database;

/** {@code lot export}: everything that was said of lots, as a file. */
@Command(
    name = "export",
    description =
        "Write everything that stands about lots as CSV; 'lot import' into an empty shed brings the"
            + " same lots back.",
    footer = {"", "Example:", "  rindward lot export --settings shed.toml --out lots.csv"})
final class LotExportCommand extends AskingCommand {
  @Mixin private SheetFile out = new SheetFile();

  @Override
  protected int answer(Farm farm, Database database) {
    return out.write(spec, LotFile.write(Lots.standing(farm.journal())));
  }
}
