package rindward.controller.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import rindward.controller.diagnosis.Room;
import rindward.hardware.Thousandths;

class AlarmSentenceTest {
  private final Room room = new Room();

  private String of(AlarmKind kind) {
    return AlarmSentence.sentence(kind, room.facts().rooms().get(0), LocalTime.of(23, 31, 40));
  }

  @Test
  void forecast_isToldAsATimeOfDayToFiveMinutes() {
    room.minutesToChilling = 132;
    assertThat(of(AlarmKind.CHILLING)).isEqualTo("The room falls below 10 C at about 01:40.");
    assertThat(of(AlarmKind.HEATER_WITHOUT_EFFECT)).endsWith("at about 01:40.");
  }

  @Test
  void coldFruit_isToldWithItsThreshold() {
    room.fruit = 9_640;
    assertThat(of(AlarmKind.CHILLING)).isEqualTo("The fruit is at 9.6 C; it chills below 10 C.");
    room.fruit = 1_800;
    assertThat(of(AlarmKind.NEAR_FREEZING)).isEqualTo("It is at 1.8 C; 2 C is near freezing.");
  }

  @Test
  void air_isToldWithTheLimitItHasPassed() {
    room.humidity = 84_500;
    assertThat(of(AlarmKind.TOO_DAMP))
        .isEqualTo("The air is at 84.5 % and should not be above 70 %.");
    room.warmest = 15_300;
    assertThat(of(AlarmKind.TOO_WARM))
        .isEqualTo("The warmest air is at 15.3 C and should not be above 15 C.");
  }

  @Test
  void whatIsNotKnownOrHasNoFigure_isNotTold() {
    room.fruit = Thousandths.NONE;
    assertThat(of(AlarmKind.CONDENSATION)).isEmpty();
    assertThat(of(AlarmKind.BATTERY_LOW)).isEmpty();
  }
}
