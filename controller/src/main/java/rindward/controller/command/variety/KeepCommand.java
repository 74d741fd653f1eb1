package rindward.controller.command.variety;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.keeping.Ending;
import rindward.controller.keeping.HalfLife;
import rindward.controller.keeping.Interval;
import rindward.controller.keeping.KeepingUntil;
import rindward.controller.keeping.Survival;
import rindward.controller.keeping.SurvivalStep;
import rindward.controller.keeping.WeightLoss;
import rindward.controller.store.Database;
import rindward.controller.variety.VarietyKeeping;
import rindward.controller.variety.VarietyName;

/** {@code keep}: how long the fruits of a variety keep, and what weight they lose. */
@Command(
    name = "keep",
    description =
        "Say how many fruits of a variety keep and how fast they lose weight. Fruits that were"
            + " eaten sound count for as long as they were there; unripe and chilled lots do not"
            + " count. Where too few fruits were seen they are only counted.",
    footer = {"", "Example:", "  rindward keep --settings shed.toml Winterglut"})
public final class KeepCommand extends AskingCommand {
  @Mixin private VarietyChoice choice = new VarietyChoice();

  @Option(
      names = "--until",
      paramLabel = "DAY",
      description = "Say which share keeps until so many days after harvest, and how sure that is.")
  private @Nullable Integer until;

  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  private static final double THREE_IN_FOUR = 0.75;
  private static final String NOT_WATCHED = "No lot that counts was watched until day ";

  /** The keys of {@code --json}. */
  record Answer(List<VarietyAnswer> varieties) {}

  /** One day on which fruits were lost, days since harvest; shares are 0..1. */
  record StepAnswer(
      int day, int atRisk, int lost, double survival, @Nullable Double low, @Nullable Double high) {
    static StepAnswer of(SurvivalStep step) {
      return new StepAnswer(
          step.day(),
          step.atRisk(),
          step.lost(),
          step.survival(),
          step.interval().map(Interval::low).orElse(null),
          step.interval().map(Interval::high).orElse(null));
    }
  }

  /** One variety; no steps and no half-life below the numbers that such a thing needs. */
  record VarietyAnswer(
      String crop,
      String variety,
      int fruits,
      int lost,
      List<StepAnswer> steps,
      @Nullable Integer halfLifeDays,
      @Nullable Double weightLossPctIn30Days,
      List<String> leftOut,
      List<String> sentences) {
    static VarietyAnswer of(VarietyName name, VarietyKeeping keeping, @Nullable Integer until) {
      Survival survival = keeping.survival();
      HalfLife half = survival.halfLife();
      return new VarietyAnswer(
          name.crop(),
          name.variety(),
          survival.fruits(),
          survival.count(Ending.LOST),
          survival.isEnoughForShare()
              ? survival.steps().stream().map(StepAnswer::of).toList()
              : List.of(),
          half.state() == HalfLife.State.REACHED ? Integer.valueOf(half.day()) : null,
          keeping.weightLoss().map(WeightLoss::monthlyPct).orElse(null),
          keeping.leftOut(),
          until == null
              ? keeping.sentences()
              : Stream.concat(keeping.sentences().stream(), Stream.of(asked(keeping, until)))
                  .toList());
    }

    /** What can be said of a day, and what it would take to say more. */
    private static String asked(VarietyKeeping keeping, int day) {
      String more =
          KeepingUntil.lotsToKnow(keeping.lots(), day, THREE_IN_FOUR)
              .map(
                  lots ->
                      " "
                          + lots
                          + (lots == 1 ? " more lot" : " more lots")
                          + " like these would settle whether three in four do.")
              .orElse("");
      return keeping.until(day).map(KeepingUntil::sentence).orElse(NOT_WATCHED + day + ".") + more;
    }
  }

  @Override
  protected int answer(Farm farm, Database database) {
    Varieties varieties = new Varieties(farm, database);
    List<VarietyName> names = choice.of(varieties, spec);
    List<VarietyAnswer> answers =
        names.stream()
            .map(name -> VarietyAnswer.of(name, varieties.verdict(name).keeping(), until))
            .toList();
    PrintWriter out = out();
    if (json) {
      JsonOutput.print(out, new Answer(answers));
      return ExitCode.FINE;
    }
    for (VarietyAnswer answer : answers) {
      out.println(answer.variety() + " (" + answer.crop() + ")");
      answer.sentences().forEach(sentence -> out.println("  " + sentence));
    }
    out.flush();
    return ExitCode.FINE;
  }
}
