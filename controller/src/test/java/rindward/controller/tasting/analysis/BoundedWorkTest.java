package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** One question may cost a small board 200 ms and no more, whatever was scored. */
class BoundedWorkTest {
  @Test
  void everySizeOfPanel_isAnsweredWithinItsShare() {
    SplittableRandom random = new SplittableRandom(8);
    for (int tasters = 2; tasters <= 12; tasters++) {
      for (int samples = 2; samples <= 8; samples++) {
        ScoreTable table = table(tasters, samples, random);
        long start = ownTime();
        PanelTest.of(table);
        long millis = (ownTime() - start) / 1_000_000;
        assertThat(millis)
            .as("processor time for %d tasters of %d cups", tasters, samples)
            .isLessThan(1000);
      }
    }
  }

  @Test
  void fourTastersOfEightCups_areDrawnAndTheErrorIsTold() {
    PanelTest test = PanelTest.of(table(4, 8, new SplittableRandom(3))).orElseThrow();
    assertThat(test.permutation().basis()).isEqualTo(PermutationP.Basis.SIMULATED);
    assertThat(test.permutation().standardError()).isBetween(1e-9, 0.003);
    assertThat(test.permutation().words()).contains("give or take");
  }

  /** The thread's own time: other work on the machine does not count. */
  private static long ownTime() {
    return java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static ScoreTable table(int tasters, int samples, SplittableRandom random) {
    return new ScoreTable(
        IntStream.range(0, tasters).mapToObj(i -> "taster " + i).toList(),
        IntStream.range(0, samples).mapToObj(i -> "S" + i).toList(),
        IntStream.range(0, tasters)
            .mapToObj(t -> random.ints(samples, 1, 10).boxed().toList())
            .toList());
  }
}
