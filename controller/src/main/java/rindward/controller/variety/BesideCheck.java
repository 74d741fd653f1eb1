package rindward.controller.variety;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rindward.controller.journal.Served;
import rindward.controller.keeping.LogRank;
import rindward.controller.keeping.Survival;
import rindward.controller.lot.Session;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.analysis.FlightResult;
import rindward.controller.tasting.analysis.RankGroups.Difference;
import rindward.controller.tasting.analysis.SampleMean;

/** A variety beside the check of its own class: where both lay on one table, and how both keep. */
final class BesideCheck {
  private final VarietyName name;
  private final VarietyName check;

  BesideCheck(VarietyName name, VarietyName check) {
    this.name = name;
    this.check = check;
  }

  /**
   * Returns a sentence for every session that served both.
   *
   * @param own codes of the variety's lots that may be judged
   * @param its codes of the check's
   */
  List<String> eating(Set<String> own, Set<String> its, List<Session> closed) {
    List<String> sentences = new ArrayList<>();
    for (Session session : closed) {
      Set<String> mine = samples(session, own);
      Set<String> checks = samples(session, its);
      session.result().stream()
          .flatMap(result -> result.results(Attribute.LIKING).stream())
          .forEach(flight -> compare(session, flight, mine, checks).ifPresent(sentences::add));
    }
    return sentences;
  }

  /** Returns the sentence on how the two keep; empty where too little was seen. */
  Optional<String> keeping(Survival own, Survival its) {
    return LogRank.between(own, its)
        .map(test -> test.sentence(name.variety(), check.variety() + " (the check)"));
  }

  private Optional<String> compare(
      Session session, FlightResult flight, Set<String> mine, Set<String> checks) {
    List<SampleMean> own = means(flight, mine);
    List<SampleMean> its = means(flight, checks);
    if (own.isEmpty() || its.isEmpty()) {
      return Optional.empty();
    }
    double points = mean(own) - mean(its);
    boolean isShown =
        flight.groups().stream()
            .flatMap(groups -> groups.differences().stream())
            .anyMatch(d -> isBetween(d, mine, checks) || isBetween(d, checks, mine));
    return Optional.of(
        String.format(
            Locale.ROOT,
            "Beside the check %s in session %s: %.1f points %s; %s.",
            check.variety(),
            session.name(),
            Math.abs(points),
            points < 0 ? "less" : "more",
            isShown ? "the panel told them apart" : "the panel did not tell them apart"));
  }

  private static boolean isBetween(Difference difference, Set<String> better, Set<String> worse) {
    return better.contains(difference.better()) && worse.contains(difference.worse());
  }

  private static Set<String> samples(Session session, Set<String> lots) {
    return session.planned().samples().stream()
        .filter(sample -> lots.contains(sample.lot()))
        .map(Served::name)
        .collect(Collectors.toSet());
  }

  private static List<SampleMean> means(FlightResult flight, Set<String> samples) {
    return flight.means().stream().filter(m -> samples.contains(m.sample())).toList();
  }

  private static double mean(List<SampleMean> means) {
    return means.stream().mapToDouble(SampleMean::mean).average().orElseThrow();
  }
}
