package rindward.controller.command.lot;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.command.base.LotLine;
import rindward.controller.command.base.VerdictAnswer;
import rindward.controller.journal.Planted;
import rindward.controller.judge.JudgedLots;
import rindward.controller.lot.Lot;
import rindward.controller.store.Database;

/** {@code lot list}: every lot in one line. */
@Command(
    name = "list",
    description = "List the lots that have fruits left, and what is planned.",
    footer = {"", "Example:", "  rindward lot list --settings shed.toml --place cellar"})
final class LotListCommand extends AskingCommand {
  @Option(names = "--place", description = "Only what is there.")
  private @Nullable String place;

  @Option(names = "--all", description = "Lots without a fruit left too.")
  private boolean all;

  @Option(
      names = "--verdicts",
      description = "With the verdict on each; slow where much was measured.")
  private boolean withVerdicts;

  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  /** The keys of {@code --json}. */
  record Answer(List<LotAnswer> lots, List<PlanAnswer> planned) {}

  /** One lot; null for a verdict that was not asked for. */
  record LotAnswer(
      String code,
      String crop,
      String variety,
      @Nullable String plot,
      @Nullable String grade,
      String place,
      Instant harvestedAt,
      FruitsAnswer fruits,
      @Nullable VerdictAnswer verdict) {
    static LotAnswer of(Lot lot, @Nullable VerdictAnswer verdict) {
      return new LotAnswer(
          lot.code(),
          lot.crop(),
          lot.variety(),
          lot.harvest().plot(),
          lot.grade() == null ? null : lot.grade().toString(),
          lot.place(),
          lot.harvestedAt(),
          FruitsAnswer.of(lot.fruits()),
          verdict);
    }
  }

  /** One plot whose lot has not come in. */
  record PlanAnswer(String code, String plot, String crop, String variety) {}

  @Override
  protected int answer(Farm farm, Database database) {
    List<Lot> lots =
        farm.lots().all().stream()
            .filter(lot -> all || lot.fruits().sound() > 0)
            .filter(lot -> place == null || lot.place().equals(place))
            .toList();
    List<Planted> planned =
        farm.lots().plans().values().stream()
            .filter(plan -> place == null && farm.lot(plan.lot()).isEmpty())
            .toList();
    JudgedLots judged = farm.judged(database);
    PrintWriter out = out();
    if (json) {
      JsonOutput.print(
          out,
          new Answer(
              lots.stream()
                  .map(lot -> LotAnswer.of(lot, verdict(judged, lot).orElse(null)))
                  .toList(),
              planned.stream()
                  .map(p -> new PlanAnswer(p.lot(), p.plot(), p.crop(), p.variety()))
                  .toList()));
      return ExitCode.FINE;
    }
    for (Lot lot : lots) {
      out.println(LotLine.of(lot, farm.crop(lot)));
      verdict(judged, lot).ifPresent(verdict -> out.println("  " + verdict.words()));
    }
    planned.forEach(plan -> out.println(LotLine.of(plan)));
    out.flush();
    return ExitCode.FINE;
  }

  private Optional<VerdictAnswer> verdict(JudgedLots judged, Lot lot) {
    return withVerdicts
        ? judged.offer(lot).map(offer -> VerdictAnswer.of(offer.verdict()))
        : Optional.empty();
  }
}
