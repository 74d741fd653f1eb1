package rindward.controller.command.variety;

import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SheetFile;
import rindward.controller.exchange.SeasonFile;
import rindward.controller.exchange.SeasonReport;
import rindward.controller.store.Database;
import rindward.controller.variety.VarietyVerdict;

/** {@code variety report}: everything that is known of the varieties, to print. */
@Command(
    name = "report",
    description =
        "Make a report on every variety: one HTML file that stands alone and prints, or a table.",
    footer = {
      "",
      "Examples:",
      "  rindward variety report --settings shed.toml --out report.html",
      "  rindward variety report --settings shed.toml --csv --out report.csv"
    })
final class VarietyReportCommand extends AskingCommand {
  @Mixin private VarietyChoice choice = new VarietyChoice();

  @Option(names = "--csv", description = "As a table for a spreadsheet.")
  private boolean csv;

  @Mixin private SheetFile out = new SheetFile();

  @Override
  protected int answer(Farm farm, Database database) {
    Varieties varieties = new Varieties(farm, database);
    List<VarietyVerdict> verdicts =
        choice.of(varieties, spec).stream().map(varieties::verdict).toList();
    return out.write(
        spec,
        csv
            ? SeasonFile.csv(verdicts)
            : SeasonReport.html(
                farm.settings().siteName(),
                LocalDate.ofInstant(farm.now(), farm.settings().zone()),
                verdicts));
  }
}
