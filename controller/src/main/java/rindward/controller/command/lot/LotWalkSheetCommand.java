package rindward.controller.command.lot;

import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SheetFile;
import rindward.controller.exchange.WalkSheet;
import rindward.controller.store.Database;

/** {@code lot walk-sheet}: a sheet of paper to take along. */
@Command(
    name = "walk-sheet",
    description = "Make a sheet of HTML to print: every lot place by place, with blank columns.",
    footer = {"", "Example:", "  rindward lot walk-sheet --settings shed.toml --out walk.html"})
final class LotWalkSheetCommand extends AskingCommand {
  @Mixin private SheetFile out = new SheetFile();

  @Override
  protected int answer(Farm farm, Database database) {
    LocalDate today = LocalDate.ofInstant(farm.now(), farm.settings().zone());
    return out.write(
        spec, WalkSheet.html(farm.settings().siteName(), today, List.copyOf(farm.lots().all())));
  }
}
