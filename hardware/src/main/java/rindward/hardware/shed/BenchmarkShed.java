package rindward.hardware.shed;

import java.util.List;

/**
 * The shed that seasons are compared in, with its variants: 4 x 3 x 2.4 m, a curing room and a
 * storage room of 6 m2 each. Walls are 12 mm board with 50 mm of insulation between studs (U 0.53,
 * ISO 6946); each room has three outer walls, half of the roof and the floor, and 2 m2 of door and
 * studs at U 1.5. The sun's aperture of 0.19 m2 is taken for each room (judgement).
 */
public enum BenchmarkShed {
  STANDARD(400, 0.53, 0.45, 0.6, new Timber(0.08, 3e-7)),
  WITHOUT_BUFFER(400, 0.53, 0.45, 0.6, Timber.NONE),
  NEARLY_EMPTY(100, 0.53, 0.45, 0.6, new Timber(0.08, 3e-7)),
  FULL(1200, 0.53, 0.45, 0.6, new Timber(0.08, 3e-7)),
  /** Cannot be held: U 3.2 and two air changes an hour. */
  BARE_BOARDS(400, 3.2, 3.2, 2, new Timber(0.08, 3e-7));

  /** Name of the room that cures. */
  public static final String CURING = "curing";

  /** Name of the room that stores. */
  public static final String STORAGE = "storage";

  private static final double ROOM_M2 = 6;
  private static final double HEIGHT_M = 2.4;
  private static final double OUTER_WALL_M2 = 7 * HEIGHT_M;
  private static final double DOOR_M2 = 2;

  private final double fruitKg;
  private final double wallU;
  private final double roofU;
  private final double leakagePerHour;
  private final Timber timber;

  BenchmarkShed(double fruitKg, double wallU, double roofU, double leakagePerHour, Timber timber) {
    this.fruitKg = fruitKg;
    this.wallU = wallU;
    this.roofU = roofU;
    this.leakagePerHour = leakagePerHour;
    this.timber = timber;
  }

  /** Returns how much fruit a season of this variant puts into a room. */
  public double fruitKg() {
    return fruitKg;
  }

  /** Returns the empty shed with its usual probes and relays. */
  public ShedPlan plan() {
    Equipment storage = new Equipment(750, 0.03, 15, 25, 0.3, 30, 0, 0, 0, 1);
    return ShedPlan.furnished(
        List.of(room(CURING, storage.withHeater(1500)), room(STORAGE, storage)), 3.8);
  }

  private RoomPlan room(String name, Equipment equipment) {
    double volumeM3 = ROOM_M2 * HEIGHT_M;
    Envelope envelope =
        new Envelope(
            List.of(
                new Envelope.Surface("walls", OUTER_WALL_M2 - DOOR_M2, wallU, false),
                new Envelope.Surface("roof", ROOM_M2, roofU, false),
                new Envelope.Surface("door and studs", DOOR_M2, Math.max(1.5, wallU), false),
                new Envelope.Surface("floor", ROOM_M2, 0.45, true)),
            leakagePerHour,
            0.19);
    return new RoomPlan(
        name,
        volumeM3,
        20,
        volumeM3 * RoomPlan.AIR_J_PER_M3_K,
        700e3,
        220,
        envelope,
        timber,
        equipment);
  }
}
