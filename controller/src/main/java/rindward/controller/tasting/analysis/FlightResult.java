package rindward.controller.tasting.analysis;

import java.util.List;
import java.util.Optional;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Blinding;

/**
 * What one flight of a closed session says about one attribute.
 *
 * @param attribute what was asked
 * @param blinding how much the tasters could know
 * @param table the scores that count: of panelists who scored every sample
 * @param leftOut whose scores or which samples do not count, and why; one sentence each
 * @param repeats how steady each panelist was
 * @param evidence what a word on each variety would rest on
 * @param test whether the panel tells the samples apart; empty where that cannot be asked
 * @param groups which samples it holds apart; empty unless the test says that there are any
 */
public record FlightResult(
    Attribute attribute,
    Blinding blinding,
    ScoreTable table,
    List<String> leftOut,
    List<Repeat> repeats,
    List<Evidence> evidence,
    Optional<FriedmanStatistic> test,
    Optional<RankGroups> groups) {
  public FlightResult {
    leftOut = List.copyOf(leftOut);
    repeats = List.copyOf(repeats);
    evidence = List.copyOf(evidence);
  }

  /** Judges the scores of one flight. */
  public static FlightResult of(
      Attribute attribute,
      Blinding blinding,
      ScoreTable table,
      List<String> leftOut,
      List<Repeat> repeats,
      List<Evidence> evidence) {
    Optional<FriedmanStatistic> test = FriedmanStatistic.of(table);
    Optional<RankGroups> groups =
        test.filter(t -> t.permutation().p().isSignificant())
            .map(t -> RankGroups.of(table.samples(), t));
    return new FlightResult(attribute, blinding, table, leftOut, repeats, evidence, test, groups);
  }

  /** Returns the mean of each sample, in the order of the table; none if no panelist counts. */
  public List<SampleMean> means() {
    return table.panelists().isEmpty() ? List.of() : SampleMean.of(table);
  }

  /** Returns what this says and what it cannot say, in the order in which it is told. */
  public List<Conclusion> conclusions() {
    return FlightWords.of(this);
  }
}
