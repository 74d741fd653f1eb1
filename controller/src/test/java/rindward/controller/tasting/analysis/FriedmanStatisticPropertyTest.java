package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rindward.controller.Any;
import rindward.controller.Seeded;

/** What must hold of any panel. */
class FriedmanStatisticPropertyTest {

  @Seeded(cases = 200)
  void theOrderOfPanelistsAndSamplesDoesNotMatter(Any any) {
    ScoreTable table = table(any, 4, 6);
    Optional<FriedmanStatistic> test = FriedmanStatistic.of(table);
    Optional<FriedmanStatistic> again = FriedmanStatistic.of(turned(table));
    assertThat(again.isPresent()).isEqualTo(test.isPresent());
    if (test.isPresent()) {
      assertThat(again.get().corrected()).isCloseTo(test.get().corrected(), within(1e-9));
      // Who is held changes both counts, never their quotient.
      assertThat(again.get().permutation().p().value())
          .isCloseTo(test.get().permutation().p().value(), within(1e-12));
    }
  }

  @Seeded(cases = 100)
  void theExactChanceIsThatOfCountingEveryArrangement(Any any) {
    ScoreTable table = table(any, 3, 4);
    Optional<FriedmanStatistic> test = FriedmanStatistic.of(table);
    if (test.isPresent()) {
      long[] counted = countEvery(MidRanks.of(table));
      assertThat(test.get().permutation().p().value())
          .isCloseTo((double) counted[0] / counted[1], within(1e-12));
    }
  }

  @Seeded(cases = 200)
  void ranksSumToTheSameForEveryPanelist(Any any) {
    ScoreTable table = table(any, 4, 6);
    int k = table.samples().size();
    for (int[] ranks : MidRanks.of(table)) {
      assertThat(IntStream.of(ranks).sum()).isEqualTo(k * (k + 1));
    }
  }

  @Seeded(cases = 200)
  void agreementLiesBetweenNoneAndFull(Any any) {
    ScoreTable table = table(any, 4, 6);
    FriedmanStatistic.of(table)
        .ifPresent(test -> assertThat(test.kendallW()).isBetween(-1e-12, 1 + 1e-12));
  }

  @Seeded(cases = 100)
  void everySampleIsInAGroup_andNoGroupHoldsADifference(Any any) {
    ScoreTable table = table(any, 4, 6);
    Optional<FriedmanStatistic> test = FriedmanStatistic.of(table);
    if (test.isPresent()) {
      RankGroups groups = RankGroups.of(table.samples(), test.get());
      assertThat(groups.groups().stream().flatMap(List::stream)).containsAll(table.samples());
      assertThat(groups.differences())
          .noneMatch(
              d ->
                  groups.groups().stream()
                      .anyMatch(g -> g.contains(d.better()) && g.contains(d.worse())));
    }
  }

  /** Two tasters and two samples at least, scored from 1 to 9. */
  private static ScoreTable table(Any any, int tasters, int samples) {
    int width = any.intBetween(2, samples);
    return table(any.list(2, tasters, () -> any.list(width, width, () -> any.intBetween(1, 9))));
  }

  private static ScoreTable table(List<List<Integer>> scores) {
    return new ScoreTable(
        IntStream.range(0, scores.size()).mapToObj(i -> "taster " + i).toList(),
        IntStream.range(0, scores.get(0).size()).mapToObj(i -> "sample " + i).toList(),
        scores);
  }

  private static ScoreTable turned(ScoreTable table) {
    List<List<Integer>> rows = new ArrayList<>();
    for (List<Integer> row : table.scores()) {
      List<Integer> turned = new ArrayList<>(row);
      Collections.rotate(turned, 1);
      rows.add(0, turned);
    }
    return table(rows);
  }

  private static long[] countEvery(int[][] ranks) {
    long observed = spread(ranks);
    long[] counted = new long[2];
    every(ranks, 0, 0, observed, counted);
    return counted;
  }

  private static void every(int[][] ranks, int row, int from, long observed, long[] counted) {
    if (row == ranks.length) {
      counted[1]++;
      counted[0] += spread(ranks) >= observed ? 1 : 0;
    } else if (from == ranks[row].length) {
      every(ranks, row + 1, 0, observed, counted);
    } else {
      for (int i = from; i < ranks[row].length; i++) {
        swap(ranks[row], from, i);
        every(ranks, row, from + 1, observed, counted);
        swap(ranks[row], from, i);
      }
    }
  }

  private static void swap(int[] row, int i, int j) {
    int value = row[i];
    row[i] = row[j];
    row[j] = value;
  }

  private static long spread(int[][] ranks) {
    long squares = 0;
    for (int j = 0; j < ranks[0].length; j++) {
      long sum = 0;
      for (int[] row : ranks) {
        sum += row[j];
      }
      squares += sum * sum;
    }
    return squares;
  }
}
