package rindward.controller.tasting.analysis;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rindward.controller.keeping.PValue;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Score;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.Sample;
import rindward.controller.tasting.design.SessionPlan;
import rindward.controller.tasting.design.Sheet;

/**
 * A session whose codes are opened: what its scores say, flight by flight. One question is the main
 * one; the others are tested only if it finds something, all together, and else described. So of
 * sessions in which every cup holds the same, one in twenty claims anything. What was worked out
 * once is kept. For any thread.
 */
public final class ClosedSession {
  private final SessionPlan plan;
  private final Attribute main;
  private final Map<Attribute, Map<String, Integer>> byCode = new EnumMap<>(Attribute.class);
  private final ToIntFunction<String> fruits;
  private final List<String> stopped;
  private final Memo<List<FlightResult>> mainResults = new Memo<>(this::judgedMain);
  private final Memo<Map<Attribute, List<FlightResult>>> otherResults =
      new Memo<>(this::judgedOthers);
  private final Map<Attribute, Map<String, Double>> means = new ConcurrentHashMap<>();

  /**
   * @param main the question that was declared first
   * @param scores all that were given; of two for one cup and attribute the later counts
   * @param fruits how many different fruits were cooked for a sample; 0 where nobody said which
   */
  public ClosedSession(
      SessionPlan plan, Attribute main, List<Score> scores, ToIntFunction<String> fruits) {
    this.plan = plan;
    this.main = main;
    this.fruits = fruits;
    for (Score score : scores) {
      byCode
          .computeIfAbsent(score.attribute(), attribute -> new HashMap<>())
          .put(score.code(), score.value());
    }
    this.stopped = bitter();
  }

  /** The same with liking as the main question. */
  public ClosedSession(SessionPlan plan, List<Score> scores, ToIntFunction<String> fruits) {
    this(plan, Attribute.LIKING, scores, fruits);
  }

  /** Returns the question that was declared first. */
  public Attribute main() {
    return main;
  }

  /** Tells whether the main question found a difference, so that the others were tested too. */
  public boolean isAnythingFound() {
    return results(main).stream().anyMatch(result -> result.groups().isPresent());
  }

  /** Returns the samples that somebody found bitter; their other scores are left out. */
  public List<String> stopped() {
    return stopped;
  }

  private List<String> bitter() {
    return plan.sheets().stream()
        .flatMap(sheet -> sheet.cups().stream())
        .filter(
            cup -> score(Attribute.BITTER, cup).filter(Attribute.BITTER::stopsSample).isPresent())
        .map(Cup::sample)
        .distinct()
        .toList();
  }

  /**
   * Returns the result of each flight. A cup that was not tasted is the only thing that is missing;
   * of a sample served twice, the cup served first counts.
   */
  public List<FlightResult> results(Attribute attribute) {
    return attribute == main
        ? mainResults.get()
        : otherResults.get().getOrDefault(attribute, described(attribute));
  }

  private List<FlightResult> judgedMain() {
    return judged(QuestionStanding.MAIN, described(main));
  }

  /** All other questions at once, as each costs the others some of their certainty. */
  private Map<Attribute, List<FlightResult>> judgedOthers() {
    List<Attribute> others =
        byCode.keySet().stream().filter(a -> a != main && a != Attribute.BITTER).toList();
    if (!isAnythingFound()) {
      return Map.of();
    }
    return judged(
            QuestionStanding.TESTED, others.stream().flatMap(a -> described(a).stream()).toList())
        .stream()
        .collect(Collectors.groupingBy(FlightResult::attribute));
  }

  private static List<FlightResult> judged(QuestionStanding standing, List<FlightResult> results) {
    List<Optional<PanelTest>> tests =
        results.stream().map(result -> PanelTest.of(result.table())).toList();
    Deque<PValue> corrected =
        new ArrayDeque<>(
            Holm.correct(tests.stream().flatMap(Optional::stream).map(PanelTest::p).toList()));
    return IntStream.range(0, results.size())
        .mapToObj(
            i ->
                results
                    .get(i)
                    .judged(standing, tests.get(i), tests.get(i).map(t -> corrected.remove())))
        .toList();
  }

  private List<FlightResult> described(Attribute attribute) {
    return IntStream.range(0, plan.flights().size())
        .mapToObj(flight -> result(attribute, flight))
        .toList();
  }

  /** Returns what may be said of samples of different flights, one sentence each. */
  public List<String> acrossFlights(Attribute attribute) {
    return AcrossFlights.of(results(attribute), plan.request().check());
  }

  /**
   * Returns the mean of every sample over the flights that served it, and nothing that a test would
   * take long to find out; empty for a sample that nobody's scores count for.
   */
  public Map<String, Double> means(Attribute attribute) {
    return means.computeIfAbsent(attribute, this::overFlights);
  }

  private Map<String, Double> overFlights(Attribute attribute) {
    Map<String, List<Double>> all = new LinkedHashMap<>();
    for (int flight = 0; flight < plan.flights().size(); flight++) {
      Counted counted = counted(attribute, flight);
      for (SampleMean mean : SampleMean.of(counted.table(), attribute.scale())) {
        all.computeIfAbsent(mean.sample(), sample -> new ArrayList<>()).add(mean.mean());
      }
    }
    Map<String, Double> ofEach = new LinkedHashMap<>();
    all.forEach(
        (sample, own) ->
            ofEach.put(
                sample, own.stream().mapToDouble(Double::doubleValue).average().orElseThrow()));
    return Collections.unmodifiableMap(ofEach);
  }

  /** The scores of one flight that count, and what was left out. */
  private record Counted(ScoreTable table, List<String> leftOut, List<Repeat> repeats) {}

  private FlightResult result(Attribute attribute, int flight) {
    Counted counted = counted(attribute, flight);
    return FlightResult.described(
        attribute,
        plan.request().blinding(),
        counted.table(),
        counted.leftOut(),
        counted.repeats(),
        evidence(counted.table().samples()));
  }

  private Counted counted(Attribute attribute, int flight) {
    List<String> bitter = attribute == Attribute.BITTER ? List.of() : stopped;
    List<String> drawn = plan.flights().get(flight).samples();
    List<String> served =
        plan.request().samples().stream().map(Sample::name).filter(drawn::contains).toList();
    List<String> samples = served.stream().filter(s -> !bitter.contains(s)).toList();
    List<String> leftOut = new ArrayList<>();
    served.stream()
        .filter(bitter::contains)
        .forEach(sample -> leftOut.add(sample + " is left out: somebody found it bitter."));
    List<String> panelists = new ArrayList<>();
    List<String> missed = new ArrayList<>();
    List<List<Integer>> rows = new ArrayList<>();
    List<Repeat> repeats = new ArrayList<>();
    for (Sheet sheet : plan.sheets()) {
      Map<String, Integer> first = scores(sheet, flight, attribute, false);
      scores(sheet, flight, attribute, true)
          .forEach(
              (sample, again) -> {
                if (first.containsKey(sample)) {
                  repeats.add(new Repeat(sheet.panelist(), first.get(sample), again));
                }
              });
      if (samples.stream().anyMatch(first::containsKey)) {
        panelists.add(sheet.panelist());
        rows.add(samples.stream().map(s -> first.getOrDefault(s, ScoreTable.NOT_TASTED)).toList());
        samples.stream()
            .filter(sample -> !first.containsKey(sample))
            .forEach(sample -> missed.add(sample + " by " + sheet.panelist()));
      } else {
        leftOut.add(sheet.panelist() + " tasted nothing of this.");
      }
    }
    if (!missed.isEmpty()) {
      leftOut.add("Not tasted, and nothing else is lost by it: " + String.join(", ", missed) + ".");
    }
    return new Counted(new ScoreTable(panelists, samples, rows), leftOut, repeats);
  }

  /** Returns what a panelist gave the samples of a flight, or only its hidden duplicate. */
  private Map<String, Integer> scores(
      Sheet sheet, int flight, Attribute attribute, boolean duplicates) {
    Map<String, Integer> scores = new HashMap<>();
    for (Cup cup : sheet.cups()) {
      if (cup.flight() == flight && cup.isDuplicate() == duplicates) {
        score(attribute, cup).ifPresent(score -> scores.put(cup.sample(), score));
      }
    }
    return scores;
  }

  private List<Evidence> evidence(List<String> samples) {
    return plan.request().samples().stream()
        .filter(sample -> samples.contains(sample.name()))
        .map(sample -> new Evidence(sample.name(), fruits.applyAsInt(sample.name()), 1))
        .toList();
  }

  private Optional<Integer> score(Attribute attribute, Cup cup) {
    return Optional.ofNullable(byCode.getOrDefault(attribute, Map.of()).get(cup.code()));
  }
}
