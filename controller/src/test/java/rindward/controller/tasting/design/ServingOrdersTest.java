package rindward.controller.tasting.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Who tastes what when: Williams designs, their balance, and what is left of it in small panels.
 */
class ServingOrdersTest {

  /**
   * Designs of 6 as printed by the MRC Cognition and Brain Sciences Unit; others by the same rule.
   */
  @ParameterizedTest
  @CsvSource({
    "3, 123 231 312 321 132 213",
    "4, 1243 2314 3421 4132",
    "5, 12534 23145 34251 45312 51423 43521 54132 15243 21354 32415",
    "6, 126354 231465 342516 453621 564132 615243",
    "8, 12837465 23148576 34251687 45362718 56473821 67584132 78615243 81726354"
  })
  void williamsDesigns_areThePublishedOnes(int samples, String design) {
    String drawn =
        WilliamsSquare.orders(samples).stream()
            .map(o -> o.stream().map(s -> "" + (s + 1)).collect(Collectors.joining()))
            .collect(Collectors.joining(" "));
    assertThat(drawn).isEqualTo(design);
  }

  @Test
  void panelTooSmall_saysWhatIsMissing() {
    assertThat(ServingOrders.draw(7, 3, new Draw(1)).sentence())
        .startsWith("3 tasters of 7 samples cannot be balanced, which takes 14 tasters")
        .endsWith("places of a sample differ by up to 1, its neighbours by up to 1.");
    assertThat(ServingOrders.draw(4, 1, new Draw(1)).sentence())
        .startsWith("1 taster of 4 samples");
  }

  @Test
  void draw_sameSeed_isTheSame() {
    assertThat(ServingOrders.draw(6, 5, new Draw(7)))
        .isEqualTo(ServingOrders.draw(6, 5, new Draw(7)));
  }
}
