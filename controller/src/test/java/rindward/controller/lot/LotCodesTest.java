package rindward.controller.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LotCodesTest {
  @Test
  void suggest_threeThousandTimes_neverRepeatsAndStaysShort() {
    Set<String> taken = new HashSet<>();
    for (int i = 0; i < 3_000; i++) {
      String code = LotCodes.suggest(taken).orElseThrow();
      assertThat(taken.add(code)).isTrue();
      assertThat(code).matches("[ACEFHJKMPRTXY3479]{3,4}");
    }
    assertThat(taken.stream().filter(code -> code.length() == 3)).hasSize(17 * 4 * 17);
  }

  @Test
  void suggest_oneAfterAnother_doesNotDifferInOnePlaceOnly() {
    String first = LotCodes.suggest(Set.of()).orElseThrow();
    String second = LotCodes.suggest(Set.of(first)).orElseThrow();

    long same = 0;
    for (int i = 0; i < first.length(); i++) {
      same += first.charAt(i) == second.charAt(i) ? 1 : 0;
    }
    assertThat(same).isLessThan(2);
  }
}
