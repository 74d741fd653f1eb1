package rindward.controller.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.RoomDemand;
import rindward.controller.room.Stock;
import rindward.hardware.Reading;

/** A range comes down to 12-16 C no faster than 5 K a day, and goes up at once. */
class SetpointRampTest {
  private static final Range KEEP =
      new Range(new Limits(12_000, 16_000), new Limits(50_000, 70_000));

  @Test
  void comesDownByTheTimeThatPassed_butNotByAGap() {
    assertThat(next(20, KEEP, 5_000, 300)).isCloseTo(20 - 300 * 5.0 / 86_400, within(1e-9));
    assertThat(next(20, KEEP, 5_000, 301)).isEqualTo(20);
    assertThat(next(14.001, KEEP, 5_000, 300)).isEqualTo(14);
    assertThat(next(10, KEEP, 5_000, 10)).isEqualTo(14);
  }

  @Test
  void beginsWhereTheRoomIs_orAtOnceWhereNobodyAskedForARamp() {
    assertThat(next(Double.NaN, KEEP, 5_000, 10)).isEqualTo(25);
    assertThat(next(20, KEEP, 0, 10)).isEqualTo(14);
    assertThat(SetpointRamp.next(20, demand(KEEP, 5_000), Picture.NONE, 10)).isEqualTo(20);
    assertThat(next(20, null, 5_000, 10)).isNaN();
  }

  @Test
  void theRangeIsMovedToItsMiddle_andItsHumidityStays() {
    assertThat(SetpointRamp.range(KEEP, 20.5))
        .isEqualTo(new Range(new Limits(18_500, 22_500), KEEP.humidity()));
    assertThat(SetpointRamp.range(KEEP, 14)).isEqualTo(KEEP);
    assertThat(SetpointRamp.range(KEEP, Double.NaN)).isEqualTo(KEEP);
  }

  private static double next(
      double middleC, @Nullable Range range, int milliCPerDay, double seconds) {
    ProbeReading air = new ProbeReading("air", ProbePlace.AIR, Reading.of(25, 60), 0, null);
    return SetpointRamp.next(
        middleC, demand(range, milliCPerDay), Picture.of(List.of(air), 0), seconds);
  }

  private static RoomDemand demand(@Nullable Range range, int milliCPerDay) {
    return new RoomDemand(range, milliCPerDay, Stock.UNTOLD, List.of());
  }
}
