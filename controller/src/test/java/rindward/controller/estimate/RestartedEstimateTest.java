package rindward.controller.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Stock;
import rindward.hardware.Reading;
import rindward.hardware.Thousandths;

/** What a room's estimate begins with, after a restart and without anything kept. */
class RestartedEstimateTest {
  private static final Instant NOW = Instant.parse("2026-11-20T06:00:00Z");
  private static final long SECOND = 1_000_000_000L;
  private static final double TIME_CONSTANT_S = 3_900 / 0.14;

  private long nanos = 7_000 * SECOND;

  @Test
  void withoutAnythingKept_fruitThatCameDaysAgo_isAsWarmAsTheRoom_howeverColdItIsOutdoors() {
    RoomEstimate begun = begin(-10, 12, NOW.minus(Duration.ofDays(5)));
    assertThat(begun.air().fruitC()).isCloseTo(12, within(0.01));
  }

  @Test
  void withoutAnythingKept_fruitThatCameJustNow_isAsColdAsOutdoors_andWarmsByItsTimeConstant() {
    assertThat(begin(-10, 12, NOW).air().fruitC()).isEqualTo(-12);
    Duration once = Duration.ofSeconds((long) TIME_CONSTANT_S);
    assertThat(begin(-10, 12, NOW.minus(once)).air().fruitC())
        .isCloseTo(12 - 24 * Math.exp(-1), within(0.01));
  }

  @Test
  void afterABriefRestart_fruitAndLearnedFiguresGoOn() {
    RoomEstimate before = begin(-10, 12, NOW).taught(learned(), new HeaterDuty(0.4, nanos));
    RoomEstimate resumed = restart(before, Duration.ofSeconds(30));

    RoomEstimate next = see(resumed, 12, -10, NOW);

    assertThat(next.air().fruitC()).isCloseTo(before.air().fruitC(), within(0.1));
    assertThat(next.response()).isEqualTo(learned());
    assertThat(next.duty().share()).isEqualTo(0.4);
    assertThat(next.outdoor().meanC()).isCloseTo(-10, within(0.01));
  }

  @Test
  void afterHoursWithoutPower_fruitHasGoneTowardsTheRoom() {
    RoomEstimate before = begin(-10, 12, NOW);
    RoomEstimate resumed = restart(before, Duration.ofSeconds((long) TIME_CONSTANT_S));

    double fruitC = see(resumed, 6, -10, NOW).air().fruitC();

    assertThat(fruitC).isCloseTo(6 - 18 * Math.exp(-1), within(0.01));
  }

  @Test
  void whatCameMeanwhile_isCold() {
    RoomEstimate before = begin(10, 12, NOW.minus(Duration.ofDays(5)));
    RoomEstimate resumed = restart(before, Duration.ofMinutes(5));

    assertThat(see(resumed, 12, 10, NOW.minusSeconds(60)).air().fruitC()).isLessThan(8.2);
  }

  @Test
  void ofUnknownAge_onlyWhatDoesNotAgeGoesOn() {
    RoomEstimate before = begin(-10, 12, NOW).taught(learned(), new HeaterDuty(0.4, nanos));
    RoomEstimate resumed = before.onClock(-nanos).resumed(-1, nanos);

    assertThat(resumed.air()).isNull();
    assertThat(resumed.outdoor().isKnown()).isFalse();
    assertThat(resumed.response()).isEqualTo(learned());
    assertThat(see(resumed, 12, -10, NOW.minus(Duration.ofDays(5))).air().fruitC())
        .isCloseTo(12, within(0.01));
  }

  @Test
  void ofAnotherRoom_isThrownAwayAfterTenMinutesInWhichNothingFitted() {
    RoomEstimate warm = begin(10, 27, NOW.minus(Duration.ofDays(5))).taught(learned(), duty());
    RoomEstimate estimate = restart(warm, Duration.ofSeconds(30));
    for (int tick = 0; tick < 59; tick++) {
      nanos += 10 * SECOND;
      estimate = see(estimate, 11, 10, NOW.minus(Duration.ofDays(5)));
    }
    assertThat(estimate.air().fruitC()).isGreaterThan(26);

    nanos += 20 * SECOND;
    estimate = see(estimate, 11, 10, NOW.minus(Duration.ofDays(5)));

    assertThat(estimate.air().fruitC()).isCloseTo(11, within(0.01));
    assertThat(estimate.response()).isEqualTo(IdentifiedResponse.NOTHING);
  }

  @Test
  void aDoorThatStandsOpenForAMoment_throwsNothingAway() {
    RoomEstimate warm = begin(10, 27, NOW.minus(Duration.ofDays(5))).taught(learned(), duty());
    RoomEstimate estimate = restart(warm, Duration.ofSeconds(30));
    for (int tick = 0; tick < 120; tick++) {
      nanos += 10 * SECOND;
      estimate = see(estimate, tick < 20 ? 15 : 22, 10, NOW.minus(Duration.ofDays(5)));
    }

    assertThat(estimate.response()).isEqualTo(learned());
    assertThat(estimate.air().fruitC()).isGreaterThan(26);
    assertThat(estimate.trial()).isNull();
  }

  @Test
  void figuresThatNoRoomCanHave_areKnownAsSuch() {
    RoomEstimate sound = begin(10, 27, NOW).taught(learned(), duty());
    assertThat(sound.hasPossibleFigures()).isTrue();
    assertThat(sound.taught(learned(), new HeaterDuty(Double.NaN, 0)).hasPossibleFigures())
        .isFalse();
    for (double swingK : new double[] {Double.NaN, -1, 1e9}) {
      IdentifiedResponse wrong = new IdentifiedResponse(swingK, AirTimeConstant.UNKNOWN, 0.1, 3, 3);
      assertThat(sound.taught(wrong, duty()).hasPossibleFigures()).isFalse();
    }
    for (double fruitC : new double[] {Double.NaN, 1e9, -80, Double.NEGATIVE_INFINITY}) {
      AirEstimate wrong = new AirEstimate(0, 12, 12, 0, 12, fruitC, 12, 12, 900, null);
      assertThat(
              new RoomEstimate(wrong, OutdoorEstimate.UNKNOWN, learned(), duty(), null)
                  .hasPossibleFigures())
          .isFalse();
    }
  }

  private static IdentifiedResponse learned() {
    return new IdentifiedResponse(3.5, new AirTimeConstant(1, 2, 9, 0, Double.NaN), 0.2, 9, 7);
  }

  private static HeaterDuty duty() {
    return new HeaterDuty(0.3, 0);
  }

  private RoomEstimate begin(double outdoorC, double roomC, @Nullable Instant newest) {
    return see(RoomEstimate.unknown(nanos), roomC, outdoorC, newest);
  }

  /** The monotonic clock begins anew with the machine. */
  private RoomEstimate restart(RoomEstimate before, Duration later) {
    RoomEstimate kept = before.onClock(-nanos);
    nanos = 3 * SECOND;
    return kept.resumed(later.toNanos(), nanos);
  }

  private RoomEstimate see(
      RoomEstimate estimate, double roomC, double outdoorC, @Nullable Instant newest) {
    return estimate.seeing(
        picture(roomC, 75), picture(outdoorC, 80), new Stock(Thousandths.NONE, newest), NOW, nanos);
  }

  private Picture picture(double temperatureC, double humidityPct) {
    return Picture.of(
        List.of(
            new ProbeReading(
                "probe", ProbePlace.AIR, Reading.of(temperatureC, humidityPct), nanos, null)),
        nanos);
  }
}
