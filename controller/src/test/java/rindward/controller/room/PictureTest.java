package rindward.controller.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.hardware.Reading;

/** What several probes say together. */
class PictureTest {
  private static final long SECOND = 1_000_000_000L;

  @Test
  void of_threeProbes_worksWithTheMedianAndKeepsTheExtremes() {
    Picture picture = Picture.of(List.of(probe("a", 12), probe("b", 20), probe("c", 13)), 0);

    assertThat(picture.temperatureMilliC()).isEqualTo(13_000);
    assertThat(picture.coldestMilliC()).isEqualTo(12_000);
    assertThat(picture.warmestMilliC()).isEqualTo(20_000);
  }

  @Test
  void of_readingExactlyThirtySecondsOld_stillCounts_andOneOlderDoesNot() {
    List<ProbeReading> probes = List.of(probe("a", 12));

    assertThat(Picture.of(probes, 30 * SECOND).hasTemperature()).isTrue();
    Picture late = Picture.of(probes, 31 * SECOND);
    assertThat(late.hasTemperature()).isFalse();
    assertThat(late.troubles()).containsExactly("Probe a last answered 31 s ago.");
  }

  @Test
  void of_valueThatAirCannotHave_isLeftOutAndTold() {
    Picture picture = Picture.of(List.of(probe("a", 12), probe("b", 85)), 0);

    assertThat(picture.temperatureMilliC()).isEqualTo(12_000);
    assertThat(picture.troubles())
        .containsExactly("Probe b says 85.0 C and 60.0 %, which air in a shed cannot be.");
  }

  @Test
  void of_probeThatFailed_saysWhatItsDriverSaid() {
    ProbeReading failed = new ProbeReading("a", ProbePlace.AIR, null, 0, "its line is open");

    assertThat(Picture.of(List.of(failed), 0).troubles())
        .containsExactly("Probe a has given no value yet: its line is open");
  }

  private static ProbeReading probe(String name, double temperatureC) {
    return new ProbeReading(name, ProbePlace.AIR, Reading.of(temperatureC, 60), 0, null);
  }
}
