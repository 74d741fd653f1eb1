package rindward.controller.command.panel;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Served;
import rindward.controller.keeping.Interval;
import rindward.controller.keeping.PValue;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Session;
import rindward.controller.store.Database;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.analysis.ClosedSession;
import rindward.controller.tasting.analysis.FlightResult;
import rindward.controller.tasting.analysis.PanelTest;
import rindward.controller.tasting.analysis.RankGroups;
import rindward.controller.tasting.analysis.SampleMean;

/** {@code panel results}: what a closed session says, and what it cannot say. */
@Command(
    name = "results",
    description = "Show what a closed session says, question by question.",
    footer = {"", "Example:", "  rindward panel results --settings shed.toml winter"})
final class PanelResultsCommand extends AskingCommand {
  @Parameters(paramLabel = "NAME", description = "Name of the session.")
  private String name = "";

  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  /** The keys of {@code --json}. */
  record Answer(
      String session,
      List<SampleAnswer> samples,
      List<FlightAnswer> flights,
      List<String> acrossGoes) {}

  /** What was in the cups, and how many tasters found it good for what. */
  record SampleAnswer(
      String sample,
      String lot,
      @Nullable String crop,
      @Nullable String variety,
      int fruits,
      Map<String, Integer> goodFor) {}

  /**
   * One question in one go; of the groups, samples that share one cannot be told apart.
   *
   * @param standing main, tested because the main one found something, or described only
   * @param p corrected for the questions and goes beside it
   */
  record FlightAnswer(
      String question,
      String standing,
      int go,
      int tasters,
      List<MeanAnswer> means,
      @Nullable Double p,
      @Nullable Double kendallW,
      List<List<String>> groups,
      List<String> conclusions,
      List<String> proofs) {}

  /** One sample; the interval is of 95 %. */
  record MeanAnswer(
      String sample,
      double mean,
      @Nullable Double low,
      @Nullable Double high,
      @Nullable Double rankSum) {}

  @Override
  protected int answer(Farm farm, Database database) {
    Session session = session(farm, name);
    ClosedSession result =
        session
            .result()
            .orElseThrow(
                () ->
                    wrong(
                        "NAME was '"
                            + name
                            + "' but that session is not closed: its codes stay shut until then"));
    List<SampleAnswer> samples =
        session.planned().samples().stream().map(sample -> sample(farm, session, sample)).toList();
    List<FlightAnswer> flights =
        Arrays.stream(Attribute.values())
            .filter(a -> session.scored().stream().map(Scored::attribute).anyMatch(a::equals))
            .sorted(Comparator.comparing(a -> a != result.main()))
            .flatMap(a -> flights(result.results(a)).stream())
            .toList();
    List<String> across = result.acrossFlights(result.main());
    if (json) {
      JsonOutput.print(out(), new Answer(name, samples, flights, across));
    } else {
      print(samples, flights, across);
    }
    return ExitCode.FINE;
  }

  private static SampleAnswer sample(Farm farm, Session session, Served sample) {
    Optional<Lot> lot = farm.lot(sample.lot());
    Map<String, Integer> goodFor = new LinkedHashMap<>();
    session.goodFor(sample.name()).forEach((use, count) -> goodFor.put(use.words(), count));
    return new SampleAnswer(
        sample.name(),
        sample.lot(),
        lot.map(Lot::crop).orElse(null),
        lot.map(Lot::variety).orElse(null),
        session.fruitsOf(sample.name()).size(),
        goodFor);
  }

  private static List<FlightAnswer> flights(List<FlightResult> results) {
    return results.stream().map(r -> flight(r, 1 + results.indexOf(r))).toList();
  }

  private static FlightAnswer flight(FlightResult result, int go) {
    List<SampleMean> means = result.means();
    List<Double> sums = result.test().map(PanelTest::rankSums).orElse(List.of());
    return new FlightAnswer(
        result.attribute().question(),
        result.standing().name().toLowerCase(Locale.ROOT),
        go,
        result.table().panelists().size(),
        means.stream().map(m -> mean(m, sums, means.indexOf(m))).toList(),
        result.corrected().map(PValue::value).orElse(null),
        result.test().flatMap(PanelTest::agreement).orElse(null),
        result.groups().map(RankGroups::groups).orElse(List.of()),
        result.words(),
        result.proofs());
  }

  private static MeanAnswer mean(SampleMean mean, List<Double> sums, int index) {
    return new MeanAnswer(
        mean.sample(),
        mean.mean(),
        mean.interval().map(Interval::low).orElse(null),
        mean.interval().map(Interval::high).orElse(null),
        sums.isEmpty() ? null : sums.get(index));
  }

  private void print(List<SampleAnswer> samples, List<FlightAnswer> flights, List<String> across) {
    PrintWriter out = out();
    for (SampleAnswer sample : samples) {
      String what = sample.crop() == null ? "" : sample.crop() + " " + sample.variety();
      out.println(
          sample.sample()
              + "  "
              + what.strip()
              + ", "
              + (sample.fruits() == 0
                  ? "not known which fruits"
                  : sample.fruits() == 1 ? "1 fruit" : sample.fruits() + " fruits")
              + goodFor(sample));
    }
    for (FlightAnswer flight : flights) {
      out.println();
      out.println(
          flight.question()
              + ", go "
              + flight.go()
              + (flight.standing().equals("described") ? ", described only" : ""));
      flight.conclusions().forEach(sentence -> out.println("  " + sentence));
      flight.means().forEach(mean -> out.println("  " + line(mean)));
    }
    if (!across.isEmpty()) {
      out.println();
      out.println("across the goes");
      across.forEach(sentence -> out.println("  " + sentence));
    }
    flights.stream().filter(flight -> !flight.proofs().isEmpty()).forEach(this::proof);
    out.flush();
  }

  /** What proves the words above, all in one place, for who asks. */
  private void proof(FlightAnswer flight) {
    PrintWriter out = out();
    out.println();
    out.println("how this was worked out: " + flight.question() + ", go " + flight.go());
    flight.proofs().forEach(sentence -> out.println("  " + sentence));
  }

  private static String goodFor(SampleAnswer sample) {
    return sample.goodFor().isEmpty()
        ? ""
        : sample.goodFor().entrySet().stream()
            .map(use -> use.getKey() + " " + use.getValue())
            .collect(Collectors.joining(", ", "; good for (tasters who say so): ", ""));
  }

  private static String line(MeanAnswer mean) {
    String interval =
        mean.low() == null || mean.high() == null
            ? ""
            : String.format(Locale.ROOT, " (%.1f to %.1f)", mean.low(), mean.high());
    return String.format(Locale.ROOT, "%-8s mean %.1f", mean.sample(), mean.mean()) + interval;
  }
}
