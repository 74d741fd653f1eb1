package rindward.controller.command.lot;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SheetFile;
import rindward.controller.exchange.Label;
import rindward.controller.exchange.LabelSheet;
import rindward.controller.journal.Planted;
import rindward.controller.lot.Lot;
import rindward.controller.store.Database;

/** {@code lot labels}: labels to print. */
@Command(
    name = "labels",
    description =
        "Make labels with a QR code of the lot's code: a sheet of HTML to print, or one SVG image."
            + " Without a code: every planned lot and every lot that has fruits left.",
    footer = {
      "",
      "Examples:",
      "  rindward lot labels --settings shed.toml --out labels.html",
      "  rindward lot labels --settings shed.toml K4T --svg --out K4T.svg",
      "  rindward lot labels --settings shed.toml --link http://shed.local:8420 --out labels.html"
    })
final class LotLabelsCommand extends AskingCommand {
  @Mixin private SheetFile out = new SheetFile();

  @Parameters(arity = "0..*", paramLabel = "CODE", description = "Codes of lots or plans.")
  private List<String> codes = List.of();

  @Option(names = "--svg", description = "One label as an SVG image.")
  private boolean svg;

  @Option(
      names = "--link",
      paramLabel = "ADDRESS",
      description =
          "Address of the page, such as http://shed.local:8420: the square then opens the lot"
              + " there.")
  private @Nullable String link;

  @Override
  protected int answer(Farm farm, Database database) {
    Set<String> wanted = new LinkedHashSet<>();
    codes.forEach(code -> wanted.add(Farm.code(code)));
    if (codes.isEmpty()) {
      wanted.addAll(farm.lots().codes());
      farm.lots().all().stream()
          .filter(lot -> lot.fruits().sound() == 0)
          .forEach(lot -> wanted.remove(lot.code()));
    }
    String site = link;
    List<Label> labels =
        wanted.stream()
            .map(code -> label(farm, code))
            .map(label -> site == null ? label : label.linked(site))
            .toList();
    if (!svg) {
      return out.write(spec, LabelSheet.html(labels));
    }
    if (labels.size() != 1) {
      throw wrong("--svg makes one image but " + labels.size() + " lots were named: name one");
    }
    return out.write(spec, labels.get(0).svg() + "\n");
  }

  private Label label(Farm farm, String code) {
    Planted plan = farm.lots().plans().get(code);
    if (plan != null && farm.lot(code).isEmpty()) {
      return new Label(code, List.of(plan.crop(), plan.variety(), "plot " + plan.plot()));
    }
    Lot lot = lot(farm, code);
    String harvested = lot.harvestedAt().atZone(farm.settings().zone()).toLocalDate().toString();
    return new Label(code, List.of(lot.crop(), lot.variety(), "harvested " + harvested));
  }
}
