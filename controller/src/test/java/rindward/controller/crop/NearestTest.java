package rindward.controller.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
  private static final List<String> WORDS = List.of("onion", "acorn", "garlic");

  @Test
  void aSlipOfTheFinger_isUnderstood() {
    assertThat(Nearest.to("onoin", WORDS)).contains("onion");
    assertThat(Nearest.to("acrn", WORDS)).contains("acorn");
    assertThat(Nearest.to("garlick", WORDS)).contains("garlic");
  }

  @Test
  void anotherWord_isNotGuessedAt() {
    assertThat(Nearest.to("leek", WORDS)).isEmpty();
    assertThat(Nearest.to("onion", List.of())).isEmpty();
  }

  @Test
  void neighboursSwapped_countAsOneChange() {
    assertThat(Nearest.distance("ab", "ba")).isEqualTo(1);
    assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
  }
}
