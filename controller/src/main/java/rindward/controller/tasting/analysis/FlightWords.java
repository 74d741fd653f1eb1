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
import rindward.controller.tasting.design.Blinding;

/** What a flight's numbers mean, in sentences that claim no more than the numbers do. */
final class FlightWords {
  /** Kendall's W from here is strong agreement, from 0.3 some (Schmidt 1997, from memory). */
  private static final double STRONG = 0.7;

  private static final double SOME = 0.3;

  /** With eight a difference of a point and a half is found more often than not. */
  private static final int MORE_TASTERS = 8;

  private final FlightResult result;
  private final List<Conclusion> conclusions = new ArrayList<>();

  private FlightWords(FlightResult result) {
    this.result = result;
  }

  static List<Conclusion> of(FlightResult result) {
    FlightWords words = new FlightWords(result);
    if (result.standing() != QuestionStanding.DESCRIBED) {
      result.test().ifPresentOrElse(words::tested, words::untested);
    }
    words.repeats();
    result.leftOut().forEach(sentence -> words.say(Kind.LEFT_OUT, sentence));
    if (result.blinding() != Blinding.FULL) {
      words.say(Kind.BLINDING, result.blinding().sentence());
    }
    if (result.standing() == QuestionStanding.MAIN) {
      words.early();
    }
    result.test().ifPresent(words::proved);
    return words.conclusions;
  }

  private void tested(PanelTest test) {
    result
        .groups()
        .ifPresentOrElse(
            groups -> say(Kind.DIFFERENCE, pairs(groups)),
            () ->
                say(
                    Kind.NO_DIFFERENCE,
                    "No sample stands out: what lies between them may be chance. That does not make"
                        + " them equal; "
                        + more(test)
                        + "."));
  }

  private static String more(PanelTest test) {
    return "the same samples with "
        + Math.max(MORE_TASTERS, 2 * test.tasters())
        + " tasters, or in a second session, would tell more";
  }

  private void proved(PanelTest test) {
    String alone = test.permutation().words();
    String corrected =
        result
            .corrected()
            .filter(p -> p.value() > test.p().value())
            .map(p -> "; corrected for the questions and goes beside it (Holm 1979) " + p.words())
            .orElse("");
    say(Kind.CHANCE, capital(alone) + corrected + ".");
    say(Kind.METHOD, test.method() + ".");
    test.agreement()
        .ifPresent(
            w ->
                say(
                    Kind.AGREEMENT,
                    String.format(
                        Locale.ROOT,
                        "The tasters %s (Kendall's W %.2f).",
                        w >= STRONG
                            ? "agreed strongly"
                            : w >= SOME ? "agreed in part" : "hardly agreed",
                        w)));
  }

  private void untested() {
    ScoreTable table = result.table();
    if (table.tasted() == 0) {
      say(Kind.NO_TEST, "Nobody scored a cup, so nothing is compared.");
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
      say(Kind.NO_DIFFERENCE, "No taster gave one sample more than another.");
    }
  }

  private String pairs(RankGroups groups) {
    if (groups.differences().isEmpty()) {
      return "These samples are not all alike, but so few tasters cannot show which of them differ:"
          + " "
          + result.test().map(FlightWords::more).orElse("taste them again")
          + ". Until then choose none for it and drop none for it.";
    }
    Map<String, List<String>> better = new LinkedHashMap<>();
    for (Difference d : groups.differences()) {
      better.computeIfAbsent(d.worse(), worse -> new ArrayList<>()).add(d.better());
    }
    return better.entrySet().stream()
        .map(entry -> listed(entry.getValue()) + verb(entry.getValue().size()) + entry.getKey())
        .collect(Collectors.joining("; ", "", others(groups)));
  }

  private String others(RankGroups groups) {
    int samples = result.table().samples().size();
    return groups.differences().size() == samples * (samples - 1) / 2
        ? "."
        : ". Between any two others it may be chance.";
  }

  private String verb(int count) {
    if (result.attribute() == Attribute.LIKING) {
      return count == 1 ? " is liked better than " : " are liked better than ";
    }
    String scores = count == 1 ? " scores" : " score";
    return scores + " higher in " + result.attribute().key() + " than ";
  }

  private void repeats() {
    if (!result.repeats().isEmpty() && result.standing() == QuestionStanding.MAIN) {
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
        .filter(i -> ScoreTable.isTasted(scores.get(i)))
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

  private static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }

  private void say(Kind kind, String sentence) {
    conclusions.add(new Conclusion(kind, sentence));
  }
}
