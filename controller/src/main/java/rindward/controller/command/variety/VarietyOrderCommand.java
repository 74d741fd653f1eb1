package rindward.controller.command.variety;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SheetFile;
import rindward.controller.exchange.OrderFile;
import rindward.controller.store.Database;
import rindward.controller.variety.OrderSheet;
import rindward.controller.variety.VarietyName;
import rindward.controller.variety.VarietyVerdict;

/** {@code variety order}: what to order seed of. */
@Command(
    name = "order",
    description =
        "Make the order sheet: what to grow again, what to try again and how, what to drop. With an"
            + " order date that has passed, each variety stands as it did then, and what the"
            + " keepers have shown since is told beside it.",
    footer = {
      "",
      "Examples:",
      "  rindward variety order --settings shed.toml",
      "  rindward variety order --settings shed.toml --date 2027-01-15 --csv --out order.csv"
    })
final class VarietyOrderCommand extends AskingCommand {
  @Option(
      names = "--date",
      paramLabel = "DAY",
      description = "Order date, such as 2027-01-15; today if not given.")
  private @Nullable LocalDate date;

  @Option(names = "--csv", description = "As a table for a spreadsheet.")
  private boolean csv;

  @Mixin private SheetFile out = new SheetFile();

  @Override
  protected int answer(Farm farm, Database database) {
    Varieties now = new Varieties(farm, database);
    List<VarietyVerdict> known = now.named(null, null).stream().map(now::verdict).toList();
    Instant end =
        date == null
            ? farm.now()
            : date.plusDays(1).atStartOfDay(farm.settings().zone()).toInstant();
    OrderSheet sheet =
        end.isBefore(farm.now())
            ? asOf(new Varieties(farm.asOf(end), database), known)
            : OrderSheet.of(known, known);
    return out.write(spec, csv ? OrderFile.csv(sheet) : OrderFile.text(sheet));
  }

  /** Varieties that came in only later are not on a sheet of that date. */
  private static OrderSheet asOf(Varieties then, List<VarietyVerdict> known) {
    List<VarietyName> names = then.named(null, null);
    List<VarietyVerdict> now = known.stream().filter(v -> names.contains(v.name())).toList();
    return OrderSheet.of(now.stream().map(v -> then.verdict(v.name())).toList(), now);
  }
}
