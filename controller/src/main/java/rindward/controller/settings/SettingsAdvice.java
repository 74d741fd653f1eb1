package rindward.controller.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rindward.controller.crop.Limits;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;

/**
 * What is allowed in a settings file but will not do what a grower hopes. What may do harm is said
 * by {@link SafetyAdvice}.
 */
public final class SettingsAdvice {
  private SettingsAdvice() {}

  /** Returns one sentence for each thing; empty when there is nothing to say. */
  public static List<String> of(Settings settings) {
    List<String> advice = new ArrayList<>();
    for (Room room : settings.rooms()) {
      certify(
          advice,
          room,
          "temperature",
          room.range().temperature(),
          room.accuracy().temperatureMilliC(),
          "C");
      certify(
          advice,
          room,
          "humidity",
          room.range().humidity(),
          room.accuracy().humidityMilliPct(),
          "%");
      if (!room.has(OutputKind.HEATER)) {
        advice.add("Room " + room.name() + " has no heater: it can be told cold, not warmed.");
      }
      if (room.heatTrust().holdsFrostBlind() && !hasOutdoorProbe(settings)) {
        advice.add(
            "Room "
                + room.name()
                + " is to be heated blind in frost, but no outdoor probe would tell of frost: it"
                + " will not be.");
      }
    }
    if (settings.safety().heartbeat() != null && !hasOutdoorProbe(settings)) {
      advice.add(
          "The heartbeat stops for a heater that does not, but without an outdoor probe that is"
              + " seen only once its room stands above its range, and not at all while the exhaust"
              + " runs: warm air from outside does the same to a room.");
    }
    return advice;
  }

  private static boolean hasOutdoorProbe(Settings settings) {
    return settings.probes().stream().anyMatch(p -> p.place() == ProbePlace.OUTDOOR);
  }

  private static void certify(
      List<String> advice, Room room, String quantity, Limits limits, int accuracy, String unit) {
    if (limits.width() < 2 * accuracy) {
      advice.add(
          String.format(
              Locale.ROOT,
              "Room %s: its probes are good to +-%s %s, so time in a %s range only %s %s wide can"
                  + " never be certain.",
              room.name(),
              plain(accuracy),
              unit,
              quantity,
              plain(limits.width()),
              unit));
    }
  }

  private static String plain(int thousandths) {
    return Kind.plain(thousandths);
  }
}
