package rindward.hardware.shed;

/**
 * One room as it is built, without what lies in it.
 *
 * @param volumeM3 volume of air
 * @param referenceC temperature at which a cubic metre of air is weighed, in degrees C: air expands
 *     at constant pressure, so the room is given a fixed weight of it, and warming it leaves its
 *     vapour pressure and dew point alone
 * @param airCapacityJPerK heat capacity of the air, and of whatever follows it within seconds
 * @param massCapacityJPerK heat capacity of walls, crates and racks
 * @param massWPerK conductance between the air and that mass
 */
public record RoomPlan(
    String name,
    double volumeM3,
    double referenceC,
    double airCapacityJPerK,
    double massCapacityJPerK,
    double massWPerK,
    Envelope envelope,
    Timber timber,
    Equipment equipment) {

  /** Heat capacity of a cubic metre of air at 20 C and 101325 Pa, 1.20415 kg/m3 x 1006 J/(kg K). */
  public static final double AIR_J_PER_M3_K = 1211.4;

  /** Returns the heat capacity of a cubic metre of air weighed at {@link #referenceC()}. */
  double airJPerM3K() {
    return AIR_J_PER_M3_K * 293.15 / (referenceC + Water.ZERO_C_IN_KELVIN);
  }

  /** Returns the same room with other outputs. */
  public RoomPlan withEquipment(Equipment other) {
    return new RoomPlan(
        name,
        volumeM3,
        referenceC,
        airCapacityJPerK,
        massCapacityJPerK,
        massWPerK,
        envelope,
        timber,
        other);
  }

  /** Returns the same room under another name. */
  public RoomPlan named(String other) {
    return new RoomPlan(
        other,
        volumeM3,
        referenceC,
        airCapacityJPerK,
        massCapacityJPerK,
        massWPerK,
        envelope,
        timber,
        equipment);
  }
}
