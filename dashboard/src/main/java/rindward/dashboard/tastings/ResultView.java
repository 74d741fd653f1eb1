package rindward.dashboard.tastings;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a closed tasting says.
 *
 * @param acrossGoes what may be said of samples of different goes, a sentence each
 */
public record ResultView(
    List<SampleView> samples, List<QuestionView> questions, List<String> acrossGoes) {
  public ResultView {
    samples = List.copyOf(samples);
    questions = List.copyOf(questions);
    acrossGoes = List.copyOf(acrossGoes);
  }

  /**
   * What was in the cups.
   *
   * @param fruits how many were cut for it
   * @param bitter whether somebody found it bitter, which ends it
   * @param goodFor what tasters ticked, with how many did
   */
  public record SampleView(
      String sample,
      String lot,
      String cropName,
      String variety,
      int fruits,
      boolean bitter,
      List<String> goodFor) {
    public SampleView {
      goodFor = List.copyOf(goodFor);
    }
  }

  /**
   * One question.
   *
   * @param standing main, tested because the main question found something, or described only
   * @param low the lowest score of its scale, whose words are {@code lowWords}
   */
  public record QuestionView(
      String key,
      String question,
      String standing,
      int low,
      int high,
      String lowWords,
      String highWords,
      List<GoView> goes) {
    public QuestionView {
      goes = List.copyOf(goes);
    }
  }

  /**
   * What one go says about one question.
   *
   * @param tasters whose scores count
   * @param p how likely so much difference is if there is none, corrected for the questions and
   *     goes beside it; null where nothing was tested
   * @param agreement Kendall's W; null likewise
   * @param groups samples that cannot be told apart; empty where none were
   * @param conclusions what there is to act on, a sentence each
   * @param proofs what proves it, a sentence each
   */
  public record GoView(
      int tasters,
      List<MeanView> means,
      @Nullable Double p,
      @Nullable Double agreement,
      List<List<String>> groups,
      List<String> conclusions,
      List<String> proofs) {
    public GoView {
      means = List.copyOf(means);
      groups = List.copyOf(groups);
      conclusions = List.copyOf(conclusions);
      proofs = List.copyOf(proofs);
    }
  }

  /**
   * One sample.
   *
   * @param low lower end of the interval of 95 %; null for a single taster
   * @param rankSum higher is more; null where nothing was tested
   */
  public record MeanView(
      String sample,
      double mean,
      @Nullable Double low,
      @Nullable Double high,
      @Nullable Double rankSum) {}
}
