package rindward.hardware.shed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class GeneratedWeatherTest {
  private static final long NEW_YEAR = Instant.parse("2026-01-01T00:00:00Z").getEpochSecond();
  private static final long DAY = 86400;

  private final Weather weather = GeneratedWeather.temperate(5);

  private double meanC(int firstDay, int days) {
    return LongStream.range(0, days * 24L)
        .mapToDouble(h -> weather.at(NEW_YEAR + firstDay * DAY + h * 3600).temperatureC())
        .average()
        .orElseThrow();
  }

  @Test
  void sameSeedAndMoment_sameAir_andAnotherSeedAnother() {
    long moment = NEW_YEAR + 100 * DAY;
    OutdoorAir first = weather.at(moment);
    weather.at(moment + DAY);
    assertThat(weather.at(moment)).isEqualTo(first);
    assertThat(GeneratedWeather.temperate(6).at(moment)).isNotEqualTo(first);
  }

  @Test
  void year_hasAColdAndAWarmSeason() {
    assertThat(meanC(0, 31)).isBetween(-10.0, 2.0);
    assertThat(meanC(181, 31)).isBetween(17.0, 27.0);
  }

  @Test
  void anyHour_isPossibleAir() {
    for (long hour = 0; hour < 2 * 8766; hour++) {
      OutdoorAir air = weather.at(NEW_YEAR + hour * 3600);
      assertThat(air.temperatureC()).isBetween(-35.0, 45.0);
      assertThat(air.relativeHumidityPct()).isBetween(10.0, 100.0);
      assertThat(air.windMPerS()).isBetween(0.0, 25.0);
      assertThat(air.globalHorizontalWPerM2()).isBetween(0.0, 1100.0);
      assertThat(air.pressurePa()).isBetween(95000.0, 105000.0);
      assertThat(air.groundC()).isBetween(0.0, 20.0);
    }
  }

  @Test
  void midnight_isDark_andAClearSummerNoonIsNot() {
    double brightest = 0;
    for (int day = 170; day < 200; day++) {
      assertThat(weather.at(NEW_YEAR + day * DAY).globalHorizontalWPerM2()).isZero();
      double noon = weather.at(NEW_YEAR + day * DAY + DAY / 2).globalHorizontalWPerM2();
      brightest = Math.max(brightest, noon);
    }
    assertThat(brightest).isGreaterThan(800);
  }

  @Test
  void oneSecond_changesNearlyNothing_evenWhereAFrontPasses() {
    for (long second = 0; second < 20 * DAY; second += 600) {
      OutdoorAir before = weather.at(NEW_YEAR + second);
      OutdoorAir after = weather.at(NEW_YEAR + second + 1);
      assertThat(Math.abs(after.temperatureC() - before.temperatureC())).isLessThan(0.01);
      assertThat(Math.abs(after.vapourPressurePa() - before.vapourPressurePa())).isLessThan(1);
    }
  }

  @Test
  void fronts_bringColderAirWithinHours() {
    double steepest = 0;
    for (long hour = 0; hour < 60 * 24; hour++) {
      double fall =
          weather.at(NEW_YEAR + hour * 3600).temperatureC()
              - weather.at(NEW_YEAR + (hour + 24) * 3600).temperatureC();
      steepest = Math.max(steepest, fall);
    }
    assertThat(steepest).isGreaterThan(6);
  }
}
