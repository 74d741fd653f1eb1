package rindward.controller.command.panel;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Scored;
import rindward.controller.journal.UsesTicked;
import rindward.controller.judge.JudgedLots;
import rindward.controller.lot.Session;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Use;
import rindward.controller.tasting.design.Caution;
import rindward.controller.tasting.design.Sheet;

/** {@code panel score}: what a taster said of a cup. */
@Command(
    name = "score",
    description = "Write down what a taster said of one cup. Said again, the later answer counts.",
    footer = {
      "",
      "Example:",
      "  rindward panel score --settings shed.toml winter --taster Wren --cup 417 liking=8"
          + " sweetness=3 bitter=0"
    })
final class PanelScoreCommand extends SayingCommand {
  @Parameters(index = "0", paramLabel = "NAME", description = "Name of the session.")
  private String name = "";

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "QUESTION=ANSWER",
      description = "Such as liking=8; the questions stand on the sheet.")
  private Map<String, Integer> answers = Map.of();

  @Option(names = "--taster", required = true, description = "Who tasted.")
  private String taster = "";

  @Option(names = "--cup", required = true, paramLabel = "CODE", description = "Code on the cup.")
  private String cup = "";

  @Option(
      names = "--good-for",
      split = ",",
      paramLabel = "USE",
      description = "What it suits, separated by commas: ${COMPLETION-CANDIDATES}.")
  private List<Use> goodFor = List.of();

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    if (answers.isEmpty() && goodFor.isEmpty()) {
      throw wrong("Say what was answered, such as liking=8 or --good-for pie");
    }
    List<Entry> entries = new ArrayList<>(scores(at));
    if (!goodFor.isEmpty()) {
      entries.add(new UsesTicked(name, taster, cup, goodFor, at));
    }
    return entries;
  }

  private List<Entry> scores(Instant at) {
    return answers.entrySet().stream()
        .<Entry>map(
            answer ->
                new Scored(name, taster, cup, attribute(answer.getKey()), answer.getValue(), at))
        .toList();
  }

  @Override
  protected void tell(PrintWriter out, Farm after, List<? extends Entry> said) {
    Session session = after.session(name).orElseThrow();
    Sheet sheet =
        session.plan().sheets().stream()
            .filter(s -> s.panelist().equals(taster))
            .findFirst()
            .orElseThrow();
    Set<String> liked =
        session.scored().stream()
            .filter(s -> s.attribute() == Attribute.LIKING)
            .map(Scored::code)
            .collect(Collectors.toSet());
    List<String> open = sheet.codes().stream().filter(code -> !liked.contains(code)).toList();
    out.println(
        open.isEmpty()
            ? taster + " has scored every cup."
            : taster + " has still to score: " + String.join(", ", open) + ".");
  }

  @Override
  protected List<String> warnings(
      Farm before, Farm after, JudgedLots judged, List<? extends Entry> said) {
    boolean stops =
        answers.entrySet().stream().anyMatch(a -> attribute(a.getKey()).stopsSample(a.getValue()));
    return stops ? List.of(Caution.BITTER.sentence()) : List.of();
  }

  private Attribute attribute(String key) {
    return Attribute.of(key)
        .orElseThrow(
            () ->
                wrong(
                    "the question was '"
                        + key
                        + "' but it must be one of "
                        + Arrays.stream(Attribute.values())
                            .map(Attribute::key)
                            .collect(Collectors.joining(", "))));
  }
}
