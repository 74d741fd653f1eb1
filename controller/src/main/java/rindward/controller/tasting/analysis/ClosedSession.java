package rindward.controller.tasting.analysis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import rindward.controller.keeping.Interval;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Score;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.SessionPlan;
import rindward.controller.tasting.design.Sheet;

/**
 * A session whose codes are opened: what its scores say, flight by flight. What was worked out once
 * is kept. For any thread.
 */
public final class ClosedSession {
  private final SessionPlan plan;
  private final Map<Attribute, Map<String, Integer>> byCode = new EnumMap<>(Attribute.class);
  private final List<String> stopped;
  private final Map<Attribute, List<FlightResult>> results = new ConcurrentHashMap<>();
  private final Map<Attribute, Map<String, Double>> means = new ConcurrentHashMap<>();

  /**
   * @param scores all that were given; of two for one cup and attribute the later counts
   */
  public ClosedSession(SessionPlan plan, List<Score> scores) {
    this.plan = plan;
    for (Score score : scores) {
      byCode
          .computeIfAbsent(score.attribute(), attribute -> new HashMap<>())
          .put(score.code(), score.value());
    }
    this.stopped = bitter();
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
   * Returns the result of each flight. A panelist who missed a sample of a flight is left out of
   * it; of a sample served twice, the cup served first counts.
   */
  public List<FlightResult> results(Attribute attribute) {
    return results.computeIfAbsent(
        attribute,
        asked ->
            IntStream.range(0, plan.flights().size())
                .mapToObj(flight -> result(asked, flight))
                .toList());
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
      if (!counted.table().panelists().isEmpty()) {
        for (int i = 0; i < counted.table().samples().size(); i++) {
          all.computeIfAbsent(counted.table().samples().get(i), sample -> new ArrayList<>())
              .add(Interval.mean(counted.table().column(i)));
        }
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
    return FlightResult.of(
        attribute,
        plan.request().blinding(),
        counted.table(),
        counted.leftOut(),
        counted.repeats(),
        evidence(counted.table().samples()));
  }

  private Counted counted(Attribute attribute, int flight) {
    List<String> bitter = attribute == Attribute.BITTER ? List.of() : stopped;
    List<String> served = plan.flights().get(flight).samples();
    List<String> samples = served.stream().filter(s -> !bitter.contains(s)).toList();
    List<String> leftOut = new ArrayList<>();
    served.stream()
        .filter(bitter::contains)
        .forEach(sample -> leftOut.add(sample + " is left out: somebody found it bitter."));
    List<String> panelists = new ArrayList<>();
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
      if (first.keySet().containsAll(samples)) {
        panelists.add(sheet.panelist());
        rows.add(samples.stream().map(first::get).toList());
      } else {
        leftOut.add(sheet.panelist() + " is left out, having missed a sample.");
      }
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
        .map(sample -> new Evidence(sample.name(), sample.fruits().size(), 1))
        .toList();
  }

  private Optional<Integer> score(Attribute attribute, Cup cup) {
    return Optional.ofNullable(byCode.getOrDefault(attribute, Map.of()).get(cup.code()));
  }
}
