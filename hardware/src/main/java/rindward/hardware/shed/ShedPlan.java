package rindward.hardware.shed;

import java.util.ArrayList;
import java.util.List;
import rindward.hardware.OutputKind;

/**
 * A simulated shed: its rooms side by side, and the probes and relays that hang in it.
 *
 * @param rooms the rooms in a row
 * @param partitionWPerK conductance of the wall between one room and the next
 */
public record ShedPlan(
    List<RoomPlan> rooms, double partitionWPerK, List<ProbePlan> probes, List<RelayPlan> relays) {

  public ShedPlan {
    rooms = List.copyOf(rooms);
    probes = List.copyOf(probes);
    relays = List.copyOf(relays);
  }

  /**
   * Returns a shed with the usual probes and relays: per room {@code <room>-air}, {@code
   * <room>-corner} and {@code <room>-pulp}, one {@code outdoor}, and {@code <room>-<kind>} for each
   * output that the room has.
   */
  public static ShedPlan furnished(List<RoomPlan> rooms, double partitionWPerK) {
    List<ProbePlan> probes = new ArrayList<>();
    List<RelayPlan> relays = new ArrayList<>();
    for (RoomPlan room : rooms) {
      String name = room.name();
      probes.add(ProbePlan.of(name + "-air", name, ProbePlace.AIR));
      probes.add(ProbePlan.of(name + "-corner", name, ProbePlace.CORNER));
      probes.add(ProbePlan.of(name + "-pulp", name, ProbePlace.PULP));
      for (OutputKind kind : OutputKind.values()) {
        if (room.equipment().has(kind)) {
          relays.add(new RelayPlan(name + "-" + kind.word(), name, kind));
        }
      }
    }
    probes.add(ProbePlan.of("outdoor", rooms.get(0).name(), ProbePlace.OUTDOOR));
    return new ShedPlan(rooms, partitionWPerK, probes, relays);
  }

  /** Returns the same shed with these probes and relays instead of its own. */
  public ShedPlan with(List<ProbePlan> otherProbes, List<RelayPlan> otherRelays) {
    return new ShedPlan(rooms, partitionWPerK, otherProbes, otherRelays);
  }

  /** Returns the same shed with one room's outputs exchanged, relays left as they are. */
  public ShedPlan withEquipment(String room, Equipment equipment) {
    int at = roomIndex(room);
    List<RoomPlan> changed = new ArrayList<>(rooms);
    changed.set(at, rooms.get(at).withEquipment(equipment));
    return new ShedPlan(changed, partitionWPerK, probes, relays);
  }

  /**
   * Returns where in the row a room stands.
   *
   * @throws IllegalArgumentException when there is none of that name
   */
  int roomIndex(String name) {
    for (int i = 0; i < rooms.size(); i++) {
      if (rooms.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException(
        "room was '"
            + name
            + "' but it must be one of "
            + String.join(", ", rooms.stream().map(RoomPlan::name).toList()));
  }
}
