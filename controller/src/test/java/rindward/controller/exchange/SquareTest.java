package rindward.controller.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Squares that a telephone reads. */
class SquareTest {

  @Test
  void anAddressOfTheShedFitsASmallSquareWithWhiteAroundIt() {
    Square square = Square.of("http://shed.local:8420/room/storage");
    // ISO/IEC 18004: 35 bytes at level Q fill version 4, which has 33 modules; four are white
    // around.
    assertThat(square.modules()).isEqualTo(33 + 8);
    assertThat(square.path()).startsWith("M4 4h1v1h-1z");
  }

  @Test
  void theImageIsBlackOnWhiteWhateverThePageIs() {
    assertThat(Square.of("K4T").svg())
        .startsWith("<svg xmlns=")
        .contains("<path fill=\"#fff\" d=\"M0 0H29V29H0z\"/>")
        .doesNotContain("style=");
  }
}
