package rindward.controller.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Limits;
import rindward.controller.diagnosis.Room;
import rindward.hardware.Thousandths;

/** Which alarms' conditions hold, for rooms a grower would recognise. */
class ConditionsTest {
  private static final AlarmTable TABLE = Room.table();

  private final Room room = new Room();

  private Set<AlarmKind> present() {
    return Conditions.of(room.facts(), TABLE).entrySet().stream()
        .filter(e -> e.getValue() == Condition.PRESENT)
        .map(Map.Entry::getKey)
        .map(AlarmId::kind)
        .collect(Collectors.toSet());
  }

  private Condition of(AlarmKind kind) {
    return Conditions.of(room.facts(), TABLE).getOrDefault(Room.alarm(kind), Condition.ABSENT);
  }

  @Test
  void roomAsItShouldBe_hasNone() {
    assertThat(present()).isEmpty();
  }

  @Test
  void dipThatTheFruitDidNotFollow_isColdAirOnly() {
    room.coldest = 8_000;
    assertThat(present()).containsExactly(AlarmKind.COLD_AIR);
  }

  @Test
  void fruitAndAirBelowTheThreshold_isChilling() {
    room.coldest = 9_000;
    room.fruit = 9_900;
    assertThat(present()).containsExactlyInAnyOrder(AlarmKind.COLD_AIR, AlarmKind.CHILLING);
  }

  @Test
  void coldFruitInAirThatWarmsIt_isOnItsWayBack() {
    room.coldest = 11_500;
    room.fruit = 9_000;
    assertThat(present()).isEmpty();
  }

  @Test
  void forecastThatSpeaks_isChillingBeforeItIsCold() {
    room.minutesToChilling = 100;
    assertThat(present()).containsExactly(AlarmKind.CHILLING);
  }

  @Test
  void onionsThatDoNotChill_areNeverChilled() {
    room.chilling = Thousandths.NONE;
    room.wanted = new Limits(0, 4_000);
    room.coldest = 500;
    room.warmest = 700;
    room.fruit = 500;
    room.dewPoint = -2_000;
    room.freezing = -600;
    assertThat(present()).isEmpty();
  }

  @Test
  void nearFreezing_isTwoDegrees_orHalfwayToTheFreezingPointWhereItIsMeantToBeCold() {
    room.fruit = 1_900;
    assertThat(of(AlarmKind.NEAR_FREEZING)).isEqualTo(Condition.PRESENT);
    room.wanted = new Limits(0, 4_000);
    room.freezing = -600;
    assertThat(of(AlarmKind.NEAR_FREEZING)).isEqualTo(Condition.ABSENT);
    room.fruit = -301;
    assertThat(of(AlarmKind.NEAR_FREEZING)).isEqualTo(Condition.PRESENT);
  }

  @Test
  void emptyRoom_isJudgedByItsAir() {
    room.fruit = Thousandths.NONE;
    room.freezing = Thousandths.NONE;
    room.chilling = Thousandths.NONE;
    room.coldest = 1_000;
    assertThat(present()).containsExactlyInAnyOrder(AlarmKind.NEAR_FREEZING, AlarmKind.COLD_AIR);
  }

  @Test
  void dewPointAboveTheFruit_isCondensation() {
    room.dewPoint = 12_501;
    assertThat(present()).containsExactly(AlarmKind.CONDENSATION);
    room.dewPoint = 12_100;
    assertThat(of(AlarmKind.CONDENSATION)).isEqualTo(Condition.UNDECIDED);
  }

  @Test
  void humidityOutsideItsRange_isDampOrDry() {
    room.humidity = 70_010;
    assertThat(present()).containsExactly(AlarmKind.TOO_DAMP);
    room.humidity = 49_990;
    assertThat(present()).containsExactly(AlarmKind.TOO_DRY);
  }

  @Test
  void heat_isTooWarmAndThenTheHighLimit() {
    room.warmest = 15_100;
    assertThat(present()).containsExactly(AlarmKind.TOO_WARM);
    room.warmest = 35_100;
    assertThat(present()).containsExactlyInAnyOrder(AlarmKind.TOO_WARM, AlarmKind.HIGH_LIMIT);
  }

  @Test
  void allProbesLost_wakesSomebodyOnlyWhenItIsColdOutside() {
    room.coldest = Thousandths.NONE;
    room.warmest = Thousandths.NONE;
    room.humidity = Thousandths.NONE;
    assertThat(present()).containsExactly(AlarmKind.UNHELD_IN_COLD);
    room.coldOutside = false;
    assertThat(present()).isEmpty();
  }

  @Test
  void lostBoard_isOneFaultOfTheWholeShed() {
    room.shedFindings.add(new Finding(AlarmKind.BOARD_LOST, ""));
    assertThat(Conditions.of(room.facts(), TABLE))
        .containsEntry(AlarmId.ofShed(AlarmKind.UNHELD_IN_COLD), Condition.PRESENT)
        .containsEntry(AlarmId.ofShed(AlarmKind.BOARD_LOST), Condition.PRESENT)
        .doesNotContainKey(Room.alarm(AlarmKind.UNHELD_IN_COLD));
  }

  @Test
  void deadHeater_canWaitWhileItIsMild() {
    Finding dead = new Finding(AlarmKind.HEATER_WITHOUT_EFFECT, "storage-heater");
    room.findings.add(dead);
    assertThat(present()).containsExactly(AlarmKind.HEATER_WITHOUT_EFFECT);
    room.coldOutside = false;
    assertThat(present()).containsExactly(AlarmKind.OUTPUT_WITHOUT_EFFECT);
  }
}
