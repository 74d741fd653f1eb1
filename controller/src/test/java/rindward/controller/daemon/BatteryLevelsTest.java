package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

/** A probe that runs out of battery is told of while there is time to change it. */
class BatteryLevelsTest {
  private OptionalInt charge = OptionalInt.empty();

  private final Probe probe =
      new Probe() {
        @Override
        public String name() {
          return "pulp";
        }

        @Override
        public Reading read() {
          return Reading.ofTemperature(12);
        }

        @Override
        public OptionalInt batteryMilliPct() {
          return charge;
        }
      };

  private final BatteryLevels batteries = new BatteryLevels(List.of(probe));

  private boolean isLowAt(int milliPct) {
    charge = OptionalInt.of(milliPct);
    batteries.look();
    return batteries.findings().contains(new Finding(AlarmKind.BATTERY_LOW, "pulp"));
  }

  @Test
  void probeThatTellsNothing_isNotJudged() {
    batteries.look();
    assertThat(batteries.findings()).isEmpty();
  }

  @Test
  void emptyingBattery_isFoundBelowAFifth_andNotForgottenBeforeItIsChanged() {
    assertThat(isLowAt(21_000)).isFalse();
    assertThat(isLowAt(19_000)).isTrue();
    assertThat(isLowAt(24_000)).as("warmed up again").isTrue();
    charge = OptionalInt.empty();
    batteries.look();
    assertThat(batteries.findings()).as("fallen silent").hasSize(1);
    assertThat(isLowAt(98_000)).isFalse();
    assertThat(isLowAt(24_000)).isFalse();
  }
}
