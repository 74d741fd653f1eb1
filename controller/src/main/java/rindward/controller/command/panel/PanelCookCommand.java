package rindward.controller.command.panel;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.CutFruitOptions;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.LotLine;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.command.base.WeightArgument;
import rindward.controller.journal.Entry;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Served;
import rindward.controller.lot.Cooking;

/** {@code panel cook}: a fruit was cut and cooked for a sample. */
@Command(
    name = "cook",
    description =
        "Write down a fruit that was cut and cooked for a sample. It leaves its lot by that, first"
            + " from what was set aside for a panel.",
    footer = {
      "",
      "Example:",
      "  rindward panel cook --settings shed.toml winter K4T --weight 1.4kg --seeds full --flesh 38"
          + " --minutes 45"
    })
final class PanelCookCommand extends SayingCommand {
  @Parameters(index = "0", paramLabel = "NAME", description = "Name of the session.")
  private String name = "";

  @Parameters(index = "1", paramLabel = "SAMPLE", description = "The sample, as it was planned.")
  private String sample = "";

  @Option(
      names = "--fruit",
      description = "Which fruit; may be left out where the sample has only one.")
  private @Nullable String fruit;

  @Option(
      names = "--weight",
      converter = WeightArgument.class,
      description = "Of the whole fruit, such as 1.4kg.")
  private @Nullable Integer weightGrams;

  @Option(names = "--minutes", description = "Until it was done.")
  private @Nullable Integer minutes;

  @Option(names = "--doneness", description = "How it came out.")
  private String doneness = "";

  @Mixin private CutFruitOptions cut = new CutFruitOptions();

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    Served served =
        farm
            .session(name)
            .orElseThrow(() -> wrong(Farm.noSession(name)))
            .planned()
            .samples()
            .stream()
            .filter(s -> s.name().equalsIgnoreCase(sample))
            .findFirst()
            .orElseThrow(() -> wrong("SAMPLE was '" + sample + "' but the session has none such"));
    if (fruit == null && served.fruits().size() > 1) {
      throw wrong("--fruit was not given but it must be one of " + served.fruits());
    }
    String which = fruit == null ? served.fruits().get(0) : fruit;
    SampleCooked cooked =
        new SampleCooked(
            name,
            served.name(),
            served.lot(),
            which,
            weightGrams,
            cut.seen(),
            minutes,
            doneness,
            at);
    return new Cooking(farm.lots()).of(cooked);
  }

  @Override
  protected void tell(PrintWriter out, Farm after, List<? extends Entry> said) {
    out.println(
        "Cooked for "
            + name
            + ": "
            + sample
            + ". "
            + LotLine.of(lot(after, ((SampleCooked) said.get(0)).lot())));
  }
}
