package rindward.controller.alarm;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Everything the shed can call about. What each means, how urgent it is and what to do stands in
 * the {@link AlarmTable}; when each holds is decided in {@link Conditions}.
 */
public enum AlarmKind {
  /** Fruit, not air, is below its chilling threshold and stays there, or will within hours. */
  CHILLING,
  NEAR_FREEZING,
  /** Air below the range although the fruit has not followed. */
  COLD_AIR,
  TOO_WARM,
  TOO_DAMP,
  TOO_DRY,
  /** The air's dew point lies above the fruit's surface: the stock is getting wet. */
  CONDENSATION,
  COOLING_FASTER,
  COOLING_SLOWER,
  DOOR_OPEN,
  PROBE_SILENT,
  PROBE_FROZEN,
  PROBES_DISPUTED,
  /** One room's heater warms the probe of another. */
  PROBES_SWAPPED,
  BATTERY_LOW,
  /** Board, power or all probes of a room are lost while it is cold outside. */
  UNHELD_IN_COLD,
  BOARD_LOST,
  POWER_GAP,
  /** The heater runs, it is cold outside, and the room does not warm. */
  HEATER_WITHOUT_EFFECT,
  OUTPUT_WITHOUT_EFFECT,
  /** The heater is off and the room warms as if it were on. */
  HEATER_RUNAWAY,
  OUTPUT_WILL_NOT_STOP,
  /** A contact has closed as often as its maker says it may. */
  CONTACT_WORN,
  HIGH_LIMIT,
  RELAY_LOST,
  TICK_OVERRUN,
  CLOCK_NOT_TRUSTED,
  DISK_NEARLY_FULL,
  STORE_DAMAGED,
  BACKUP_FAILING,
  /** No copy has come to the second place for more than a week. */
  NO_COPY_ELSEWHERE,
  CHANNEL_FAILING,
  /** The settings file is broken, and what it says of the wiring is new: everything is off. */
  SETTINGS_BROKEN,
  /** The settings file is broken; the shed is run by what was last accepted. */
  SETTINGS_PASSED_OVER,
  /** A newer version was installed, was not well, and this one was put back. */
  UPGRADE_UNDONE,
  /** A newer version of this program wrote entries that this one cannot read. */
  NEWER_ENTRIES,
  /** One of them may be a command to an output: its room is only observed. */
  UNREAD_COMMAND,
  /** Something found in a fruit of a lot makes people ill. */
  LOT_HARMFUL,
  /** A part of the program that runs by itself has not done its work for too long. */
  TASK_FAILING,
  LOTS_MISFIT,
  LOT_CURED,
  LOT_READY,
  LOT_EAT_FIRST,
  LOT_PAST;

  /** Returns the kind's word in files and messages, as {@code near-freezing}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns the kind of that word. */
  public static Optional<AlarmKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
