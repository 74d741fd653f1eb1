package rindward.controller.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rindward.controller.crop.Limits;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.Room;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.hardware.OutputKind;
import rindward.hardware.wired.GpioDriver;

/** What is allowed in a settings file but will not do what a grower hopes. */
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
      } else if (room.heatTrust().needsFan() && !room.has(OutputKind.CIRCULATION)) {
        advice.add(
            "Room "
                + room.name()
                + " has a heater and no circulation fan: if the heater has a fan of its own, say so"
                + " with heater_needs_fan = false; if not, its heat stays where it is made.");
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
    for (OutputSetting output : settings.outputs()) {
      if (output.driver() instanceof GpioDriver gpio && gpio.active().mayBeOnAtBoot(gpio.line())) {
        advice.add(
            "Output "
                + output.name()
                + " ("
                + gpio.place()
                + ") may be on while the board starts and nobody drives the line; see the table of"
                + " relay lines in hardware/README.md.");
      }
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
