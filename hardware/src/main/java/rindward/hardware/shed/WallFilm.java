package rindward.hardware.shed;

import rindward.hardware.air.SaturationPressure;

/**
 * The inner face of one part of the envelope, and the water on it. The face has no heat capacity of
 * its own:
 *
 * <pre>T_face = Ta - U Rsi (Ta - Tx) + r h m / A,    r = Rsi (1 - U Rsi)</pre>
 *
 * where m is the water condensing on it in kg/s, A its area and h the latent heat; of that heat the
 * share 1 - U Rsi goes to the room and the rest outside. Rsi 0.13 m2 K/W and its convective part
 * 2.5 W/(m2 K) are those of ISO 6946. What a face cannot hold runs off.
 */
final class WallFilm {
  private static final double INNER_RESISTANCE = 0.13;
  private static final double CONVECTIVE_W_PER_M2_K = 2.5;

  /** What clings to a vertical face before it runs, in kg/m2; common practice. */
  private static final double HOLDS_KG_PER_M2 = 0.05;

  private final Envelope.Surface surface;
  private final double outerShare;
  private double filmKg;
  private double faceC;
  private double facePa;
  private double exchangeKgPerSPa;
  private double outKgPerS;

  WallFilm(Envelope.Surface surface) {
    this.surface = surface;
    outerShare = surface.uWPerM2K() * INNER_RESISTANCE;
  }

  /** Announces to the air how this face will exchange water over the step. */
  void offerWater(RoomVapour vapour, double airC, OutdoorAir outdoor, double dtSeconds) {
    double beyondC = surface.toGround() ? outdoor.groundC() : outdoor.temperatureC();
    faceC = airC - outerShare * (airC - beyondC);
    facePa = SaturationPressure.overIceOrWaterPa(faceC);
    double airPa = vapour.vapourPa();
    exchangeKgPerSPa = 0;
    outKgPerS = 0;
    if (filmKg <= 0 && airPa <= facePa) {
      return;
    }
    // The face warms as it takes water, so dp/dT in series with the film makes g smaller.
    double perM2 = Water.wetKgPerSPa(CONVECTIVE_W_PER_M2_K, faceC);
    double warming =
        perM2
            * Water.latentJPerKg(faceC)
            * Water.saturationSlopePaPerK(facePa, faceC)
            * INNER_RESISTANCE
            * (1 - outerShare);
    exchangeKgPerSPa = perM2 * surface.areaM2() / (1 + warming);
    if (exchangeKgPerSPa * (facePa - airPa) * dtSeconds > filmKg) {
      outKgPerS = filmKg / dtSeconds;
      exchangeKgPerSPa = 0;
      vapour.source(outKgPerS);
    } else {
      vapour.exchange(exchangeKgPerSPa, facePa);
    }
  }

  /** Moves the water of the step and returns what had to be invented because the film dried. */
  double exchangeWater(double meanVapourPa, double dtSeconds) {
    if (exchangeKgPerSPa > 0) {
      outKgPerS = exchangeKgPerSPa * (facePa - meanVapourPa);
    }
    filmKg -= outKgPerS * dtSeconds;
    double inventedKg = Math.max(0, -filmKg);
    filmKg += inventedKg;
    return inventedKg;
  }

  /** Returns the heat that the water of the last step brought to the room's side. */
  double latentW() {
    return -outKgPerS * Water.latentJPerKg(faceC) * (1 - outerShare);
  }

  /** Adds mist that settles here. */
  void settle(double kg) {
    filmKg += kg;
  }

  /** Lets run off what the face cannot hold, and returns it in kg. */
  double runOff() {
    double excess = Math.max(0, filmKg - HOLDS_KG_PER_M2 * surface.areaM2());
    filmKg -= excess;
    return excess;
  }

  double filmKg() {
    return filmKg;
  }

  double faceC() {
    return faceC;
  }
}
