package rindward.controller.desk;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.crop.Limits;
import rindward.controller.room.Picture;
import rindward.hardware.OutputKind;

/** The sentences of the rooms page. */
final class RoomWords {
  private RoomWords() {}

  /** Returns how the shed is, the worst first. */
  static String health(ShedSnapshot snapshot) {
    if (!snapshot.store().isEmpty()) {
      return snapshot.store();
    }
    List<RoomState> held = snapshot.rooms().stream().filter(r -> !r.rests()).toList();
    if (held.isEmpty()) {
      return "Every room rests.";
    }
    List<String> out =
        held.stream()
            .filter(r -> !isInRange(r))
            .map(r -> r.room().name() + ", " + astray(r))
            .toList();
    if (out.isEmpty()) {
      return "Every room is in its range.";
    }
    return "Not in its range: " + String.join("; ", out) + ".";
  }

  /** Returns how a room is out of its range, in a few words. */
  private static String astray(RoomState state) {
    Picture picture = state.picture();
    if (!picture.hasTemperature() || !picture.hasHumidity()) {
      return "not measured";
    }
    String warmth =
        astray(state.range().temperature(), picture.temperatureMilliC(), "too cold", "too warm");
    String damp =
        astray(state.range().humidity(), picture.humidityMilliPct(), "too dry", "too damp");
    return warmth.isEmpty() ? damp : damp.isEmpty() ? warmth : warmth + " and " + damp;
  }

  private static String astray(Limits limits, int value, String below, String above) {
    return value < limits.low() ? below : value > limits.high() ? above : "";
  }

  /** Tells whether temperature and humidity are both known and inside the room's range. */
  static boolean isInRange(RoomState state) {
    Picture picture = state.picture();
    return picture.hasTemperature()
        && picture.hasHumidity()
        && state.range().temperature().contains(picture.temperatureMilliC())
        && state.range().humidity().contains(picture.humidityMilliPct());
  }

  /** Returns what is wrong with a room's parts; null when all is well. */
  static @Nullable String problem(RoomState state) {
    for (Map.Entry<OutputKind, String> failure : state.failures().entrySet()) {
      return "The " + failure.getKey().word() + " cannot be switched: " + failure.getValue();
    }
    List<String> troubles = state.picture().troubles();
    return troubles.isEmpty() ? null : troubles.get(0);
  }
}
