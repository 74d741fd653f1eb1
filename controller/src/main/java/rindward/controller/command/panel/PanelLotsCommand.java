package rindward.controller.command.panel;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.judge.JudgedLots;
import rindward.controller.store.Database;
import rindward.controller.variety.CupWorth;
import rindward.controller.variety.Grown;

/** {@code panel lots}: what the cups of each lot can say, before one is chosen. */
@Command(
    name = "lots",
    description =
        "Say of each lot with a free fruit what its cups can say of its variety; those that can"
            + " speak come first.",
    footer = {"", "Example:", "  rindward panel lots --settings shed.toml"})
final class PanelLotsCommand extends AskingCommand {
  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  /** The keys of {@code --json}. */
  record Answer(List<LotAnswer> lots) {}

  /** One lot; {@code says} is much, unsure or nothing. */
  record LotAnswer(String code, String crop, String variety, int free, String says, String words) {}

  @Override
  protected int answer(Farm farm, Database database) {
    JudgedLots judged = farm.judged(database);
    List<LotAnswer> lots =
        farm.lots().all().stream()
            .filter(lot -> lot.fruits().free() > 0)
            .flatMap(lot -> judged.grown(lot).stream())
            .sorted(Comparator.comparing(grown -> CupWorth.of(grown).says()))
            .map(PanelLotsCommand::lot)
            .toList();
    PrintWriter out = out();
    if (json) {
      JsonOutput.print(out, new Answer(lots));
      return ExitCode.FINE;
    }
    if (lots.isEmpty()) {
      out.println("No lot has a free fruit.");
    }
    lots.forEach(
        lot ->
            out.println(
                lot.code()
                    + "  "
                    + (lot.variety().isEmpty() ? lot.crop() : lot.crop() + " " + lot.variety())
                    + ": "
                    + lot.words()));
    out.flush();
    return ExitCode.FINE;
  }

  private static LotAnswer lot(Grown grown) {
    CupWorth worth = CupWorth.of(grown);
    return new LotAnswer(
        grown.lot().code(),
        grown.lot().crop(),
        grown.lot().variety(),
        grown.lot().fruits().free(),
        worth.says().name().toLowerCase(Locale.ROOT),
        worth.words());
  }
}
