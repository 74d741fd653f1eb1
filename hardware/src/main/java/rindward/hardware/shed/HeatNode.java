package rindward.hardware.shed;

/**
 * One lump of heat: a capacity with one temperature, and what an implicit stage of {@link RoomHeat}
 * needs to remember of it.
 */
final class HeatNode {
  double capacityJPerK;
  double temperatureC;

  /** Heat put straight into this node during a step. */
  double sourceW;

  private double startC;
  private double baseC;

  HeatNode(double capacityJPerK, double temperatureC) {
    this.capacityJPerK = capacityJPerK;
    this.temperatureC = temperatureC;
  }

  void beginStep() {
    startC = temperatureC;
    baseC = temperatureC;
  }

  /** Sets the base of the second stage: y0 + (1 - gamma)/gamma (Y1 - y0). */
  void beginSecondStage(double ratio) {
    baseC = startC + ratio * (temperatureC - startC);
  }

  /** Returns C/a, the conductance that ties the node to its base over a stage of a seconds. */
  double tieWPerK(double stageSeconds) {
    return capacityJPerK / stageSeconds;
  }

  /** Returns the known side of the node's equation: C/a base + Q. */
  double knownW(double stageSeconds) {
    return capacityJPerK / stageSeconds * baseC + sourceW;
  }

  double heatJ() {
    return capacityJPerK * temperatureC;
  }
}
