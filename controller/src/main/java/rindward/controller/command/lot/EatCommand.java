package rindward.controller.command.lot;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.command.base.LotLine;
import rindward.controller.command.base.VerdictAnswer;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.store.Database;

/** {@code eat}: what to eat first. */
@Command(
    name = "eat",
    description =
        "Say what to eat first, and why. Fruits that are set aside are not offered, nor are lots"
            + " that still cure or rest.",
    footer = {"", "Example:", "  rindward eat --settings shed.toml"})
public final class EatCommand extends AskingCommand {
  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  /** The keys of {@code --json}; the first lot is to be eaten first. */
  record Answer(List<LotAnswer> lots) {}

  /** One lot. */
  record LotAnswer(
      String code, String crop, String variety, String place, int free, VerdictAnswer verdict) {}

  @Override
  protected int answer(Farm farm, Database database) {
    List<Offer> offers = farm.judged(database).toEat();
    PrintWriter out = out();
    if (json) {
      JsonOutput.print(out, new Answer(offers.stream().map(EatCommand::lot).toList()));
      return ExitCode.FINE;
    }
    if (offers.isEmpty()) {
      out.println("Nothing is to be eaten now.");
    }
    for (Offer offer : offers) {
      out.println(LotLine.of(offer.lot()));
      VerdictAnswer verdict = VerdictAnswer.of(offer.verdict());
      out.println("  " + verdict.words());
      verdict.lines(farm.settings().zone()).forEach(line -> out.println("    " + line));
    }
    out.flush();
    return ExitCode.FINE;
  }

  private static LotAnswer lot(Offer offer) {
    return new LotAnswer(
        offer.lot().code(),
        offer.lot().crop(),
        offer.lot().variety(),
        offer.lot().place(),
        offer.lot().fruits().free(),
        VerdictAnswer.of(offer.verdict()));
  }
}
