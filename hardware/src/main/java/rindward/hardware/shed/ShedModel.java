package rindward.hardware.shed;

import java.util.ArrayList;
import java.util.List;

/**
 * The physics of the whole shed: its rooms, and the heat between them. Needs nothing but plans and
 * weather, so a trial can drive it without probes or relays. Not thread-safe.
 */
public final class ShedModel {
  /** Longest step the rooms are solved with; longer ones are divided. */
  public static final double LONGEST_STEP_SECONDS = 10;

  private final ShedPlan plan;
  private final List<RoomModel> rooms = new ArrayList<>();
  private final List<RoomInputs> inputs = new ArrayList<>();
  private final double[] partitionW;

  /** Builds the shed with every room at this temperature and humidity, empty, all outputs off. */
  public ShedModel(ShedPlan plan, double temperatureC, double relativeHumidityPct) {
    this.plan = plan;
    for (RoomPlan room : plan.rooms()) {
      rooms.add(new RoomModel(room, temperatureC, relativeHumidityPct));
      inputs.add(new RoomInputs());
    }
    partitionW = new double[rooms.size()];
  }

  /** Returns the plan the shed was built from. */
  public ShedPlan plan() {
    return plan;
  }

  /** Advances all rooms under one weather. */
  public void step(OutdoorAir outdoor, double dtSeconds) {
    int steps = (int) Math.ceil(dtSeconds / LONGEST_STEP_SECONDS);
    for (int i = 0; i < steps; i++) {
      shortStep(outdoor, dtSeconds / steps);
    }
  }

  private void shortStep(OutdoorAir outdoor, double dtSeconds) {
    for (int i = 0; i < partitionW.length; i++) {
      partitionW[i] = fromNeighbour(i, i - 1) + fromNeighbour(i, i + 1);
    }
    for (int i = 0; i < partitionW.length; i++) {
      rooms.get(i).step(inputs.get(i), outdoor, partitionW[i], dtSeconds);
    }
  }

  private double fromNeighbour(int room, int next) {
    return next < 0 || next >= rooms.size()
        ? 0
        : plan.partitionWPerK() * (rooms.get(next).airC() - rooms.get(room).airC());
  }

  /**
   * Returns one room.
   *
   * @throws IllegalArgumentException when there is none of that name
   */
  public RoomModel room(String name) {
    return rooms.get(plan.roomIndex(name));
  }

  /**
   * Returns what is switched on in one room.
   *
   * @throws IllegalArgumentException when there is none of that name
   */
  public RoomInputs inputs(String room) {
    return inputs.get(plan.roomIndex(room));
  }
}
