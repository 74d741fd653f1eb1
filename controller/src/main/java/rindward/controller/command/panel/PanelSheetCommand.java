package rindward.controller.command.panel;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.command.base.SheetFile;
import rindward.controller.exchange.CookSheet;
import rindward.controller.exchange.PanelSheet;
import rindward.controller.lot.Session;
import rindward.controller.store.Database;
import rindward.controller.tasting.design.Caution;
import rindward.controller.tasting.design.Sheet;

/** {@code panel sheet}: what lies before each taster, and what the cook goes by. */
@Command(
    name = "sheet",
    description =
        "Make sheets of HTML to print. A taster's sheet shows codes and nothing else; the cook's"
            + " shows what is in each cup, and must not lie on the table.",
    footer = {
      "",
      "Examples:",
      "  rindward panel sheet --settings shed.toml winter --out tasters.html",
      "  rindward panel sheet --settings shed.toml winter --cook --out cook.html"
    })
final class PanelSheetCommand extends AskingCommand {
  @Parameters(paramLabel = "NAME", description = "Name of the session.")
  private String name = "";

  @Option(names = "--taster", description = "Only this one's; all if not given.")
  private @Nullable String taster;

  @Option(names = "--cook", description = "The cook's sheet.")
  private boolean cook;

  @Option(names = "--json", description = "Answer the tasters' sheets as one JSON object.")
  private boolean json;

  @Mixin private SheetFile out = new SheetFile();

  /** The keys of {@code --json}. */
  record Answer(String session, List<String> cautions, List<SheetAnswer> sheets) {}

  /** What one taster may know. */
  record SheetAnswer(String taster, List<String> codes) {}

  @Override
  protected int answer(Farm farm, Database database) {
    Session session = session(farm, name);
    if (cook) {
      return out.write(spec, CookSheet.html(farm.settings().siteName(), session));
    }
    List<Sheet> sheets =
        session.plan().sheets().stream()
            .filter(sheet -> taster == null || sheet.panelist().equals(taster))
            .toList();
    if (sheets.isEmpty()) {
      throw wrong(
          "--taster was '" + taster + "' but it must be one of " + session.planned().panelists());
    }
    if (json) {
      JsonOutput.print(
          out(),
          new Answer(
              name,
              Stream.of(Caution.values()).map(Caution::sentence).toList(),
              sheets.stream().map(s -> new SheetAnswer(s.panelist(), s.codes())).toList()));
      return ExitCode.FINE;
    }
    return out.write(spec, PanelSheet.html(farm.settings().siteName(), session, sheets));
  }
}
