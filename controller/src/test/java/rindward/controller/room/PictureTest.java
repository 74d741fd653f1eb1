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
    Picture picture = Picture.of(List.of(probe("a", 12), probe("b", 17), probe("c", 13)), 0);

    assertThat(picture.temperatureMilliC()).isEqualTo(13_000);
    assertThat(picture.coldestMilliC()).isEqualTo(12_000);
    assertThat(picture.warmestMilliC()).isEqualTo(17_000);
  }

  @Test
  void of_readingExactlyTwentySecondsOld_stillCounts_andOneOlderDoesNot() {
    List<ProbeReading> probes = List.of(probe("a", 12));

    assertThat(Picture.of(probes, 20 * SECOND).hasTemperature()).isTrue();
    Picture late = Picture.of(probes, 21 * SECOND);
    assertThat(late.hasTemperature()).isFalse();
    assertThat(late.troubles()).containsExactly("Probe a last answered 21 s ago.");
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

  @Test
  void of_probesThatDisagree_namesBothAndWhatTheySay() {
    Picture picture = Picture.of(List.of(probe("a", 12), probe("b", 17), probe("c", 12.4)), 0);

    assertThat(picture.troubles())
        .containsExactly(
            "Probes a and b disagree: 12.0 C and 17.0 C. Compare them with a thermometer of your"
                + " own.");
  }

  @Test
  void of_wetProbeBesideADryOne_losesItsHumidityOnly() {
    ProbeReading wet = new ProbeReading("a", ProbePlace.AIR, Reading.of(12, 100), 0, null);

    Picture picture = Picture.of(List.of(wet, probe("b", 13)), 0);

    assertThat(picture.humidityMilliPct()).isEqualTo(60_000);
    assertThat(picture.temperatureMilliC()).isEqualTo(12_500);
    assertThat(Picture.of(List.of(wet), 0).humidityMilliPct()).isEqualTo(100_000);
  }

  @Test
  void of_valueThatNeverChanges_isNotUsedAfterAnHour() {
    long hour = 3_600 * SECOND;
    Reading same = Reading.of(12, 60);
    ProbeReading live = reading(same, hour, 0);
    ProbeReading frozen = reading(same, hour + SECOND, 0);

    assertThat(Picture.of(List.of(live), hour).troubles()).isEmpty();
    Picture picture = Picture.of(List.of(frozen), hour + SECOND);
    assertThat(picture.hasTemperature()).isFalse();
    assertThat(picture.troubles())
        .containsExactly(
            "Probe a has said exactly the same for more than an hour; it is not used.");
  }

  private static ProbeReading reading(Reading said, long taken, long sameSince) {
    return new ProbeReading("a", ProbePlace.AIR, said, taken, sameSince, 20 * SECOND, null);
  }

  private static ProbeReading probe(String name, double temperatureC) {
    return new ProbeReading(name, ProbePlace.AIR, Reading.of(temperatureC, 60), 0, null);
  }
}
