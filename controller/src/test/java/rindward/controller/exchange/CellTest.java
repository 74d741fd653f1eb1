package rindward.controller.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.controller.Any;
import rindward.controller.Seeded;

/** What a spreadsheet would reckon is a text in it, and comes back as typed. */
class CellTest {
  private static final String TELLING = "'=+-@\t1a.";

  @ParameterizedTest
  @ValueSource(
      strings = {"=1+1", "+cmd", "-2 C at night", "@SUM(A1)", "\tx", "\u0001x", "'=1", "''-x", "="})
  void whatBeginsAsAFormula_isMarked_andComesBackAsTyped(String typed) {
    assertThat(Cell.written(typed)).isEqualTo("'" + typed);
    assertThat(Cell.typed(Cell.written(typed))).isEqualTo(typed);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "Rook", "12.5", "-0.5", "+3", "-1,5", "'s crate", "'", "a=b", "10-13"})
  void numbersAndOtherTexts_stayAsTheyAre(String typed) {
    assertThat(Cell.written(typed)).isEqualTo(typed);
    assertThat(Cell.typed(typed)).isEqualTo(typed);
  }

  @Seeded
  void anyText_comesBackAsTyped_andBeginsNoFormula(Any any) {
    StringBuilder drawn = new StringBuilder();
    for (int left = any.intBetween(0, 12); left > 0; left--) {
      drawn.append(TELLING.charAt(any.intBetween(0, TELLING.length() - 1)));
    }
    String typed = drawn.toString();
    String written = Cell.written(typed);
    assertThat(Cell.typed(written)).isEqualTo(typed);
    assertThat(written).doesNotMatch("(?s)[=@\\t].*");
  }
}
