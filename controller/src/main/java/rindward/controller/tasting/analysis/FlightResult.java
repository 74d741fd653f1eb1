package rindward.controller.tasting.analysis;

import java.util.List;
import java.util.Optional;
import rindward.controller.keeping.PValue;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Blinding;

/**
 * What one flight of a closed session says about one attribute.
 *
 * @param attribute what was asked
 * @param blinding how much the tasters could know
 * @param table the scores that count
 * @param leftOut which cups or samples do not count, and why; one sentence each
 * @param repeats how steady each panelist was
 * @param evidence what a word on each variety would rest on
 * @param standing the question's place in its session
 * @param test whether the panel tells the samples apart; empty where that is not or cannot be asked
 * @param corrected the test's chance, corrected for the questions and goes beside it
 * @param groups which samples it holds apart; empty unless the corrected chance says that there are
 *     any
 */
public record FlightResult(
    Attribute attribute,
    Blinding blinding,
    ScoreTable table,
    List<String> leftOut,
    List<Repeat> repeats,
    List<Evidence> evidence,
    QuestionStanding standing,
    Optional<PanelTest> test,
    Optional<PValue> corrected,
    Optional<RankGroups> groups) {
  public FlightResult {
    leftOut = List.copyOf(leftOut);
    repeats = List.copyOf(repeats);
    evidence = List.copyOf(evidence);
  }

  /** Returns the scores of one flight, described. */
  static FlightResult described(
      Attribute attribute,
      Blinding blinding,
      ScoreTable table,
      List<String> leftOut,
      List<Repeat> repeats,
      List<Evidence> evidence) {
    return new FlightResult(
        attribute,
        blinding,
        table,
        leftOut,
        repeats,
        evidence,
        QuestionStanding.DESCRIBED,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Returns the same with what its test found; with a single question nothing is corrected. */
  FlightResult judged(QuestionStanding place, Optional<PanelTest> found, Optional<PValue> chance) {
    return new FlightResult(
        attribute,
        blinding,
        table,
        leftOut,
        repeats,
        evidence,
        place,
        found,
        chance,
        chance.filter(PValue::isSignificant).flatMap(p -> found.map(PanelTest::pairs)));
  }

  /** Returns the mean of each sample that was tasted, in the order of the table. */
  public List<SampleMean> means() {
    return SampleMean.of(table, attribute.scale());
  }

  /** Returns what this says and what it cannot say, in the order in which it is told. */
  public List<Conclusion> conclusions() {
    return FlightWords.of(this);
  }

  /** Returns what there is to act on, in words without figures. */
  public List<String> words() {
    return sentences(false);
  }

  /** Returns what proves it, for who asks. */
  public List<String> proofs() {
    return sentences(true);
  }

  private List<String> sentences(boolean areProofs) {
    return conclusions().stream()
        .filter(c -> c.kind().isProof() == areProofs)
        .map(Conclusion::sentence)
        .toList();
  }
}
