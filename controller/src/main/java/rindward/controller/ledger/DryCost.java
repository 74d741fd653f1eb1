package rindward.controller.ledger;

import java.util.Arrays;
import java.util.Optional;
import rindward.controller.crop.Crop;
import rindward.controller.crop.HumidityRole;
import rindward.hardware.Thousandths;
import rindward.hardware.air.SaturationPressure;

/**
 * What dry air costs squash and pumpkins in weight while they cure, beyond what they would have
 * lost at the dry limit of the guide: {@code k x saturation pressure x (limit - humidity)} over
 * time. The k of 27 ng/(kg s Pa) follows from 1.0 and 1.5 % a week of kabocha at 12.5 and 20 C (UC
 * Davis Produce Facts, Pumpkin and Winter Squash; week, temperatures and 60 % humidity from
 * memory). Not thread-safe.
 */
final class DryCost implements SampleHold.Counter {
  private static final double LOSS_PER_SECOND_PA = 27e-12;
  private static final int REMEMBERED = 1024;
  private static final double TO_THOUSANDTHS = 1e5;

  private final int limitMilliPct;
  private int[] temperatures = {};
  private double[] pressuresPa = {};
  private double lost;

  private DryCost(int limitMilliPct) {
    this.limitMilliPct = limitMilliPct;
  }

  /** Returns a counter; empty for a type of which nobody knows what dry air costs. */
  static Optional<DryCost> of(Crop crop) {
    boolean isSquash =
        switch (crop.group()) {
          case PEPO, MAXIMA, MOSCHATA -> true;
          case SWEET_POTATO, ALLIUM, POTATO -> false;
        };
    return crop.cure()
        .flatMap(cure -> cure.humidityEffect().dry())
        .filter(side -> isSquash && side.role() == HumidityRole.COST)
        .map(side -> new DryCost(side.limit().value()));
  }

  @Override
  public void held(
      long fromMillis,
      long heldMillis,
      int[] temperatureMilliC,
      int[] humidityMilliPct,
      int offset,
      int count) {
    for (int i = offset; i < offset + count; i++) {
      int t = temperatureMilliC[i];
      int humidity = humidityMilliPct[i];
      if (t != Thousandths.NONE && humidity != Thousandths.NONE && humidity < limitMilliPct) {
        double deficitPa = pressurePa(t) * (limitMilliPct - humidity) / TO_THOUSANDTHS;
        lost += LOSS_PER_SECOND_PA * deficitPa * heldMillis / 1000;
      }
    }
  }

  @Override
  public void unknown(long fromMillis, long millis) {
    // What was not measured cost nothing that anybody could tell.
  }

  /** Returns the cost in thousandths of a percent of the weight. */
  int milliPct() {
    return Math.toIntExact(Math.round(lost * TO_THOUSANDTHS));
  }

  private double pressurePa(int t) {
    if (temperatures.length == 0) {
      temperatures = new int[REMEMBERED];
      pressuresPa = new double[REMEMBERED];
      Arrays.fill(temperatures, Thousandths.NONE);
    }
    int slot = Math.floorMod(t / 10, REMEMBERED);
    if (temperatures[slot] != t) {
      temperatures[slot] = t;
      pressuresPa[slot] = SaturationPressure.overIceOrWaterPa(Thousandths.toDouble(t));
    }
    return pressuresPa[slot];
  }
}
