package rindward.hardware.shed;

import java.util.List;

/**
 * Heat flow in one room: the air as a hub, the inner mass and each lot's shell as its spokes, each
 * core behind its shell.
 *
 * <pre>
 * air    Ca dTa/dt = Qa + G (Tx - Ta) + Gm (Tm - Ta) + sum Gs (Ts - Ta)
 * mass   Cm dTm/dt = Qm + Gm (Ta - Tm)
 * shell  Cs dTs/dt = Qs + Gs (Ta - Ts) + Gi (Tc - Ts)
 * core   Cc dTc/dt = Qc + Gi (Ts - Tc)
 * </pre>
 *
 * C in J/K, G in W/K, Q in W, T in degrees C; G (Tx - Ta) stands for everything outside. A step is
 * two implicit stages with gamma = 1 - 1/sqrt 2, second order and damping however long it is
 * (Alexander 1977, SDIRK2); each stage is solved exactly from the leaves to the hub. Since the last
 * stage is the result, the mean air temperature (1 - gamma) Y1 + gamma Y2 is the one that makes
 * heat in less heat out equal to heat stored, to rounding.
 */
final class RoomHeat {
  private static final double GAMMA = 1 - Math.sqrt(0.5);

  final HeatNode air;
  final HeatNode mass;
  private final double massWPerK;
  private final List<FruitLot> lots;

  RoomHeat(RoomPlan plan, double temperatureC, List<FruitLot> lots) {
    air = new HeatNode(plan.airCapacityJPerK(), temperatureC);
    mass = new HeatNode(plan.massCapacityJPerK(), temperatureC);
    massWPerK = plan.massWPerK();
    this.lots = lots;
  }

  /**
   * Takes one step and returns the mean air temperature over it.
   *
   * @param outsideWPerK G, the sum of all conductances to outside
   * @param outsideW the sum of each of them times the temperature it leads to
   */
  double step(double dtSeconds, double outsideWPerK, double outsideW) {
    air.beginStep();
    mass.beginStep();
    for (FruitLot lot : lots) {
      lot.shell.beginStep();
      lot.core.beginStep();
    }
    double stageSeconds = GAMMA * dtSeconds;
    solve(stageSeconds, outsideWPerK, outsideW);
    double firstAirC = air.temperatureC;
    double ratio = (1 - GAMMA) / GAMMA;
    air.beginSecondStage(ratio);
    mass.beginSecondStage(ratio);
    for (FruitLot lot : lots) {
      lot.shell.beginSecondStage(ratio);
      lot.core.beginSecondStage(ratio);
    }
    solve(stageSeconds, outsideWPerK, outsideW);
    return (1 - GAMMA) * firstAirC + GAMMA * air.temperatureC;
  }

  // Each spoke is written as T = offset + share Ta and put into the hub's equation.
  private void solve(double stageSeconds, double outsideWPerK, double outsideW) {
    double diagonal = air.tieWPerK(stageSeconds) + outsideWPerK;
    double known = air.knownW(stageSeconds) + outsideW;
    double massDiagonal = mass.tieWPerK(stageSeconds) + massWPerK;
    double massKnown = mass.knownW(stageSeconds);
    if (massWPerK > 0) {
      diagonal += massWPerK * (1 - massWPerK / massDiagonal);
      known += massWPerK * massKnown / massDiagonal;
    }
    for (FruitLot lot : lots) {
      lot.eliminate(stageSeconds);
      diagonal += lot.filmWPerK() * (1 - lot.share());
      known += lot.filmWPerK() * lot.offsetC();
    }
    air.temperatureC = known / diagonal;
    if (massWPerK > 0) {
      mass.temperatureC = (massKnown + massWPerK * air.temperatureC) / massDiagonal;
    }
    for (FruitLot lot : lots) {
      lot.substitute(air.temperatureC);
    }
  }

  double heatJ() {
    double sum = air.heatJ() + mass.heatJ();
    for (FruitLot lot : lots) {
      sum += lot.heatJ();
    }
    return sum;
  }
}
