package rindward.controller.tasting.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.analysis.Conclusion.Kind;
import rindward.controller.tasting.analysis.RankGroups.Difference;

/** What a flight's numbers mean, in sentences that claim no more than the numbers do. */
final class FlightWords {
  /** Kendall's W from here is strong agreement, from 0.3 some (Schmidt 1997, from memory). */
  private static final double STRONG = 0.7;

  private static final double SOME = 0.3;

  private final FlightResult result;
  private final List<Conclusion> conclusions = new ArrayList<>();

  private FlightWords(FlightResult result) {
    this.result = result;
  }

  static List<Conclusion> of(FlightResult result) {
    FlightWords words = new FlightWords(result);
    result.test().ifPresentOrElse(words::tested, words::untested);
    words.repeats();
    result.leftOut().forEach(sentence -> words.say(Kind.LEFT_OUT, sentence));
    words.say(Kind.BLINDING, result.blinding().sentence());
    words.say(Kind.UNIT, "This speaks of these fruits, cooked this way, on this day.");
    words.early();
    return words.conclusions;
  }

  private void tested(FriedmanStatistic test) {
    String how = " (" + test.permutation().words() + ").";
    if (result.groups().isEmpty()) {
      say(Kind.NO_DIFFERENCE, "The panel did not tell the samples apart" + how);
    } else {
      say(Kind.DIFFERENCE, "The panel told the samples apart" + how);
      say(Kind.PAIRS, pairs(result.groups().get()));
    }
    double w = test.kendallW();
    String agreed =
        w >= STRONG ? "agreed strongly" : w >= SOME ? "agreed in part" : "hardly agreed";
    say(
        Kind.AGREEMENT,
        String.format(Locale.ROOT, "The tasters %s (Kendall's W %.2f).", agreed, w));
  }

  private void untested() {
    ScoreTable table = result.table();
    if (table.panelists().isEmpty()) {
      say(Kind.NO_TEST, "Nobody scored every sample, so nothing is compared.");
    } else if (table.samples().size() < 2) {
      say(Kind.NO_TEST, "Fewer than two samples are left, so nothing is compared.");
    } else if (table.panelists().size() == 1) {
      say(
          Kind.NO_TEST,
          "One taster, so nothing can be tested; "
              + table.panelists().get(0)
              + " gave, from the highest: "
              + fromHighest(table)
              + ".");
    } else {
      say(Kind.NO_DIFFERENCE, "Every taster gave all samples the same score.");
    }
  }

  private String pairs(RankGroups groups) {
    if (groups.differences().isEmpty()) {
      return "Allowing for all pairs, no two of them can be held apart (Newell and MacFarlane"
          + " 1987).";
    }
    Map<String, List<String>> better = new LinkedHashMap<>();
    for (Difference d : groups.differences()) {
      better.computeIfAbsent(d.worse(), worse -> new ArrayList<>()).add(d.better());
    }
    return better.entrySet().stream()
        .map(entry -> listed(entry.getValue()) + verb(entry.getValue().size()) + entry.getKey())
        .collect(
            Collectors.joining(
                "; ",
                "Allowing for all pairs (Newell and MacFarlane 1987), ",
                "; no other two can be held apart."));
  }

  private String verb(int count) {
    if (result.attribute() == Attribute.LIKING) {
      return count == 1 ? " is liked better than " : " are liked better than ";
    }
    String scores = count == 1 ? " scores" : " score";
    return scores + " higher in " + result.attribute().key() + " than ";
  }

  private void repeats() {
    if (!result.repeats().isEmpty()) {
      say(
          Kind.REPEATABILITY,
          result.repeats().stream()
              .map(Repeat::words)
              .collect(
                  Collectors.joining(
                      ", ", "Served the same sample twice, scores differed: ", ".")));
    }
  }

  private void early() {
    List<Evidence> early = result.evidence().stream().filter(Evidence::isEarly).toList();
    if (early.isEmpty()) {
      return;
    }
    boolean oneEach = result.evidence().stream().allMatch(e -> e.fruits() == 1);
    say(
        Kind.EARLY_IMPRESSION,
        oneEach
            ? "One fruit each: early impression."
            : "Early impression of "
                + listed(early.stream().map(Evidence::words).toList())
                + ": a word on a variety needs "
                + Evidence.ENOUGH_FRUITS
                + " fruits and "
                + Evidence.ENOUGH_SESSIONS
                + " sessions.");
  }

  private static String fromHighest(ScoreTable table) {
    List<Integer> scores = table.scores().get(0);
    return IntStream.range(0, scores.size())
        .boxed()
        .sorted((a, b) -> scores.get(b) - scores.get(a))
        .map(i -> table.samples().get(i) + " " + scores.get(i))
        .collect(Collectors.joining(", "));
  }

  private static String listed(List<String> names) {
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  private void say(Kind kind, String sentence) {
    conclusions.add(new Conclusion(kind, sentence));
  }
}
