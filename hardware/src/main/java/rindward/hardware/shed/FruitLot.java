package rindward.hardware.shed;

import rindward.hardware.air.SaturationPressure;

/**
 * One lot of fruit lying in a room: a shell that meets the air and a core behind it, the water it
 * loses through its skin, and the water that condenses on it. Not thread-safe.
 *
 * <p>A dry skin gives m = k M (p_s - p). A shell below the dew point, or one with water on it,
 * exchanges as a wet surface by all of its film's conductance, and while water lies on it the skin
 * loses none. The heat capacity stays that of the mass as it was loaded.
 */
public final class FruitLot {
  private final FruitLoad loaded;
  final HeatNode shell;
  final HeatNode core;
  private final double filmWPerK;
  private final double coreWPerK;
  private final boolean twoNodes;

  private double massKg;
  private double condensateKg;

  private double coreDiagonal;
  private double coreKnown;
  private double offsetC;
  private double share;

  private boolean wet;
  private double skinPa;
  private double exchangeKgPerSPa;
  private double lastWaterKgPerS;

  FruitLot(FruitLoad load) {
    loaded = load;
    FruitPhysics physics = load.physics();
    massKg = load.massKg();
    condensateKg = load.wetKg();
    twoNodes = physics.shellShare() < 1;
    double capacityJPerK = massKg * physics.specificHeatJPerKgK();
    shell = new HeatNode(capacityJPerK * physics.shellShare(), load.temperatureC());
    core = new HeatNode(capacityJPerK * (1 - physics.shellShare()), load.temperatureC());
    filmWPerK = physics.filmWPerKgK() * massKg;
    coreWPerK = twoNodes ? physics.coreWPerKgK() * massKg : 0;
  }

  /** Returns the lot's code. */
  public String code() {
    return loaded.code();
  }

  /** Returns the temperature of the outer shell, which the dew point is compared with. */
  public double surfaceC() {
    return shell.temperatureC;
  }

  /** Returns the temperature of the core; that of the shell for a small fruit. */
  public double coreC() {
    return twoNodes ? core.temperatureC : shell.temperatureC;
  }

  /** Returns the mean temperature of shell and core, weighted by mass. */
  public double meanC() {
    return heatJ() / (shell.capacityJPerK + core.capacityJPerK);
  }

  /** Returns the present mass without the water lying on it. */
  public double massKg() {
    return massKg;
  }

  /** Returns the water lying on the skin. */
  public double condensateKg() {
    return condensateKg;
  }

  /** Returns whether more than a film that nobody could see, 0.1 g per kg of fruit, lies on it. */
  public boolean isWet() {
    return condensateKg > 1e-4 * massKg;
  }

  /** Returns the lot as it would be carried out now. */
  FruitLoad asLoad() {
    return new FruitLoad(code(), massKg, meanC(), condensateKg, loaded.physics());
  }

  /** Announces to the air how this lot will exchange water over the step. */
  void offerWater(RoomVapour vapour, double dtSeconds) {
    skinPa = SaturationPressure.overIceOrWaterPa(shell.temperatureC);
    double airPa = vapour.vapourPa();
    lastWaterKgPerS = 0;
    wet = condensateKg > 0 || airPa > skinPa;
    if (!wet) {
      exchangeKgPerSPa = loaded.physics().transpirationKgPerSPa() * massKg;
    } else {
      exchangeKgPerSPa = Water.wetKgPerSPa(filmWPerK, shell.temperatureC);
      if (exchangeKgPerSPa * (skinPa - airPa) * dtSeconds > condensateKg) {
        lastWaterKgPerS = condensateKg / dtSeconds;
        exchangeKgPerSPa = 0;
        vapour.source(lastWaterKgPerS);
        return;
      }
    }
    vapour.exchange(exchangeKgPerSPa, skinPa);
  }

  /**
   * Moves the water of the step, and puts the heat that it takes and that of respiration into the
   * nodes.
   *
   * @param meanVapourPa mean vapour pressure of the air over the step
   * @return water that had to be invented because a film dried within the step, in kg
   */
  double exchangeWater(double meanVapourPa, double dtSeconds) {
    if (exchangeKgPerSPa > 0) {
      lastWaterKgPerS = exchangeKgPerSPa * (skinPa - meanVapourPa);
    }
    double outKg = lastWaterKgPerS * dtSeconds;
    if (wet || outKg < 0) {
      condensateKg -= outKg;
    } else {
      massKg -= outKg;
    }
    double inventedKg = Math.max(0, -condensateKg);
    condensateKg += inventedKg;
    // Respiration is put where most of the fruit is.
    double latentW = -lastWaterKgPerS * Water.latentJPerKg(shell.temperatureC);
    double respirationW = respirationW();
    shell.sourceW = twoNodes ? latentW : latentW + respirationW;
    core.sourceW = twoNodes ? respirationW : 0;
    return inventedKg;
  }

  /** Returns the heat that the last step put into the fruit by water and respiration, in W. */
  double sourceW() {
    return shell.sourceW + core.sourceW;
  }

  // W = M w Q10^((T - T_ref)/10)
  private double respirationW() {
    FruitPhysics physics = loaded.physics();
    double tens = (coreC() - FruitPhysics.RESPIRATION_REFERENCE_C) / 10;
    return massKg * physics.respirationWPerKg() * Math.exp(tens * Math.log(physics.q10()));
  }

  /** Writes this lot as T_shell = offset + share T_air for one implicit stage. */
  void eliminate(double stageSeconds) {
    double diagonal = shell.tieWPerK(stageSeconds) + filmWPerK;
    double known = shell.knownW(stageSeconds);
    if (twoNodes) {
      coreDiagonal = core.tieWPerK(stageSeconds) + coreWPerK;
      coreKnown = core.knownW(stageSeconds);
      diagonal += coreWPerK * (1 - coreWPerK / coreDiagonal);
      known += coreWPerK * coreKnown / coreDiagonal;
    }
    offsetC = known / diagonal;
    share = filmWPerK / diagonal;
  }

  /** Puts the air temperature of the stage back into shell and core. */
  void substitute(double airC) {
    shell.temperatureC = offsetC + share * airC;
    if (twoNodes) {
      core.temperatureC = (coreKnown + coreWPerK * shell.temperatureC) / coreDiagonal;
    }
  }

  double filmWPerK() {
    return filmWPerK;
  }

  double offsetC() {
    return offsetC;
  }

  double share() {
    return share;
  }

  double heatJ() {
    return shell.heatJ() + core.heatJ();
  }
}
