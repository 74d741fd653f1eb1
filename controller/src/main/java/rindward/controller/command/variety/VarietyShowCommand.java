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
import rindward.controller.journal.Decision;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.store.Database;
import rindward.controller.variety.Suggestion;
import rindward.controller.variety.VarietyName;
import rindward.controller.variety.VarietyVerdict;
import rindward.controller.variety.Yield;

/** {@code variety show}: does it ripen here, does it eat well if ripe, does it keep? */
@Command(
    name = "show",
    description =
        "Answer three questions about a variety, or about every one: does it ripen here, does it"
            + " eat well if ripe, does it keep?",
    footer = {"", "Example:", "  rindward variety show --settings shed.toml Winterglut"})
final class VarietyShowCommand extends AskingCommand {
  @Mixin private VarietyChoice choice = new VarietyChoice();

  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  /** The keys of {@code --json}. */
  record Answer(List<VarietyAnswer> varieties) {}

  /** One question, with what the answer rests on. */
  record QuestionAnswer(String answer, List<String> reasons) {}

  /** What the three answers speak for; null if nobody can say yet. */
  record SuggestionAnswer(
      @Nullable String decision, List<String> facts, String change, String how) {
    static SuggestionAnswer of(Suggestion suggestion) {
      return new SuggestionAnswer(
          suggestion.decision().map(Decision::toString).orElse(null),
          suggestion.facts(),
          suggestion.change(),
          suggestion.how());
    }
  }

  /** One variety; null for a decision that was not made. */
  record VarietyAnswer(
      String crop,
      String variety,
      QuestionAnswer ripens,
      QuestionAnswer eats,
      QuestionAnswer keeps,
      List<String> yield,
      boolean isEarlyImpression,
      List<String> setApart,
      List<String> besideCheck,
      SuggestionAnswer suggestion,
      boolean isProvisional,
      @Nullable String decision,
      @Nullable String reason) {
    static VarietyAnswer of(VarietyVerdict verdict) {
      List<String> keeps = verdict.keeping().sentences();
      return new VarietyAnswer(
          verdict.name().crop(),
          verdict.name().variety(),
          new QuestionAnswer(verdict.ripening().answer().toString(), verdict.ripensBecause()),
          new QuestionAnswer(verdict.eating().words(), verdict.eating().reasons()),
          new QuestionAnswer(keeps.get(0), verdict.keepsBecause()),
          verdict.yield().seasons().stream().map(Yield.Season::sentence).toList(),
          verdict.eating().isOpen(),
          Stream.concat(verdict.harmful().stream(), verdict.apart().stream()).toList(),
          verdict.besideCheck(),
          SuggestionAnswer.of(verdict.suggestion()),
          verdict.stillKeeping() > 0,
          verdict.decided().map(d -> d.decision().toString()).orElse(null),
          verdict.decided().map(VarietyDecided::reason).orElse(null));
    }
  }

  @Override
  protected int answer(Farm farm, Database database) {
    Varieties varieties = new Varieties(farm, database);
    List<VarietyName> names = choice.of(varieties, spec);
    List<VarietyVerdict> verdicts = names.stream().map(varieties::verdict).toList();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      JsonOutput.print(out, new Answer(verdicts.stream().map(VarietyAnswer::of).toList()));
    } else {
      verdicts.forEach(verdict -> print(out, verdict));
      out.flush();
    }
    return ExitCode.FINE;
  }

  private static void print(PrintWriter out, VarietyVerdict verdict) {
    VarietyAnswer answer = VarietyAnswer.of(verdict);
    out.println(answer.variety() + " (" + answer.crop() + "): " + verdict.words());
    question(out, "ripens here?", answer.ripens());
    question(out, "eats well if ripe?", answer.eats());
    question(out, "keeps?", answer.keeps());
    out.println("  bore " + String.join(" ", answer.yield()));
    answer.setApart().forEach(sentence -> out.println("  " + sentence));
    answer.besideCheck().forEach(sentence -> out.println("  " + sentence));
    out.println("  Suggested: " + verdict.suggestion().words());
    verdict.suggestion().sentences().forEach(sentence -> out.println("    " + sentence));
    if (answer.isProvisional()) {
      out.println(
          "  Provisional: "
              + verdict.stillKeeping()
              + (verdict.stillKeeping() == 1 ? " fruit is" : " fruits are")
              + " still kept.");
    }
    verdict
        .decided()
        .ifPresent(
            d ->
                out.println(
                    "  Decided: "
                        + d.decision().words()
                        + (d.reason().isEmpty() ? "." : ": " + d.reason())));
  }

  private static void question(PrintWriter out, String question, QuestionAnswer answer) {
    out.println("  " + question + " " + answer.answer());
    answer.reasons().forEach(reason -> out.println("    " + reason));
  }
}
