package rindward.controller.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class AgingTest {
  private static final List<String> SOURCE = List.of(Sources.FROM_MEMORY);

  /**
   * Saltveit, Respiratory Metabolism, USDA Handbook 66 (draft 2002): stepped Q10 of 3, 2.5, 2 and
   * 1.5 takes the rate of 1 at 0 C to 3, 7.5, 15 and 22.5 at 10, 20, 30 and 40 C.
   */
  @Test
  void q10_matchesTheStepsOfHandbook66() {
    assertThat(q10(3_000, 0).rate(10_000)).isEqualTo(3_000);
    assertThat(q10(2_500, 10_000).rate(20_000)).isEqualTo(2_500);
    assertThat(q10(2_000, 20_000).rate(30_000)).isEqualTo(2_000);
    assertThat(q10(1_500, 30_000).rate(40_000)).isEqualTo(1_500);
  }

  @Test
  void q10_atTheReferenceIsOneAndTenDegreesBelowIsItsInverse() {
    assertThat(q10(2_000, 12_500).rate(12_500)).isEqualTo(Aging.REFERENCE);
    assertThat(q10(2_000, 12_500).rate(2_500)).isEqualTo(500);
  }

  @Test
  void aTable_isStraightBetweenItsPointsAndFlatBeyondThem() {
    TableAging table = new TableAging(List.of(point(0, 1_000), point(4_000, 3_000)));
    assertThat(table.rate(-10_000)).isEqualTo(1_000);
    assertThat(table.rate(0)).isEqualTo(1_000);
    assertThat(table.rate(2_000)).isEqualTo(2_000);
    assertThat(table.rate(4_000)).isEqualTo(3_000);
    assertThat(table.rate(30_000)).isEqualTo(3_000);
  }

  private static Q10Aging q10(int q10, int reference) {
    return new Q10Aging(new Cited<>(q10, SOURCE), new Cited<>(reference, SOURCE));
  }

  private static Cited<TableAging.Point> point(int temperature, int rate) {
    return new Cited<>(new TableAging.Point(temperature, rate), SOURCE);
  }
}
