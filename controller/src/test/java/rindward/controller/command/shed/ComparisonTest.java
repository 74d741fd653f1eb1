package rindward.controller.command.shed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.wired.Offset;

/** A probe beside a thermometer, or in a jar over salt; the jars change with each question. */
class ComparisonTest {
  private final Deque<Reading> jars = new ArrayDeque<>();
  private final List<String> asked = new ArrayList<>();
  private int minutesOfWaiting;
  private Reading now = Reading.of(20, 50);
  private double driftPct;

  private final Probe probe =
      new Probe() {
        @Override
        public String name() {
          return "air";
        }

        @Override
        public Reading read() {
          Reading said = now;
          if (driftPct != 0) {
            now =
                Reading.of(
                    said.temperatureMilliC() / 1000.0, said.humidityMilliPct() / 1000.0 + driftPct);
          }
          return said;
        }
      };

  @Test
  void thermometer_givesWhatIsToBeAdded() throws IOException {
    now = Reading.of(20.4, 50);

    assertThat(comparison().withThermometer(20_100)).hasValue(new Offset(-300, 0));
    assertThat(minutesOfWaiting).isEqualTo(60_000);
  }

  /** Greenspan 1977: table salt at 20 C has 75.47 %. */
  @Test
  void oneSalt_givesWhatIsToBeAdded() throws IOException {
    jars.add(Reading.of(20, 72));

    assertThat(comparison().withOneSalt()).hasValue(new Offset(0, 3_470));
    assertThat(asked).singleElement().asString().contains("over wet table salt");
  }

  /** Greenspan 1977 at 20 C: 33.07 % and 75.47 %, 42.4 % apart. */
  @Test
  void twoSalts_giveALineThroughBoth() throws IOException {
    jars.add(Reading.of(20, 35));
    jars.add(Reading.of(20, 75));

    Offset found = comparison().withTwoSalts().orElseThrow();

    assertThat(found).isEqualTo(new Offset(0, -4_030, 1_060_000));
  }

  @Test
  void probeThatStillMoves_isNotSetRight() {
    now = Reading.of(20, 70);
    driftPct = 0.2;

    assertThatThrownBy(() -> comparison().withOneSalt())
        .hasMessage("probe air has not settled; wait longer");
  }

  @Test
  void probeInTheWrongJar_isRefused() {
    jars.add(Reading.of(20, 35));

    assertThatThrownBy(() -> comparison().withOneSalt())
        .hasMessageContaining("probe air is off by 40.47 %: it is broken or in the wrong place");
  }

  @Test
  void jarTooCold_isRefused() {
    jars.add(Reading.of(3, 75));

    assertThatThrownBy(() -> comparison().withOneSalt()).hasMessageContaining("5 to 30 C");
  }

  @Test
  void withoutAYes_nothingIsFound() throws IOException {
    assertThat(new Comparison(probe, millis -> {}, question -> false).withTwoSalts()).isEmpty();
  }

  private Comparison comparison() {
    return new Comparison(
        probe,
        millis -> minutesOfWaiting += millis,
        question -> {
          asked.add(question);
          now = jars.isEmpty() ? now : jars.remove();
          return true;
        });
  }
}
