package rindward.hardware.shed;

import rindward.hardware.air.SaturationPressure;

/**
 * The state of {@link Timber}: the humidity it would be in balance with, phi in percent, at the
 * temperature of the inner mass that it is part of.
 *
 * <pre>k dphi/dt = g (p - phi/100 p_s(Tm))</pre>
 *
 * k in kg per percent, g in kg/(s Pa). Binding the water gives off its latent heat.
 */
final class TimberBuffer {
  private final Timber timber;
  private double balancePct;
  private double facePa;
  private double takenKgPerS;

  TimberBuffer(Timber timber, double relativeHumidityPct) {
    this.timber = timber;
    balancePct = relativeHumidityPct;
  }

  void offerWater(RoomVapour vapour, double massC) {
    if (timber.kgPerPct() > 0) {
      facePa = balancePct / 100 * SaturationPressure.overIceOrWaterPa(massC);
      vapour.exchange(timber.kgPerSPa(), facePa);
    }
  }

  void exchangeWater(double meanVapourPa, double dtSeconds) {
    if (timber.kgPerPct() > 0) {
      takenKgPerS = timber.kgPerSPa() * (meanVapourPa - facePa);
      balancePct += takenKgPerS * dtSeconds / timber.kgPerPct();
    }
  }

  double latentW(double massC) {
    return takenKgPerS * Water.latentJPerKg(massC);
  }

  double waterKg() {
    return timber.kgPerPct() * balancePct;
  }

  double balancePct() {
    return balancePct;
  }
}
