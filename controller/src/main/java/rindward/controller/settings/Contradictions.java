package rindward.controller.settings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.room.Output;
import rindward.controller.room.ProbePlace;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.settings.Settings.Safety;
import rindward.hardware.OutputKind;
import rindward.hardware.mqtt.NetworkRelaySettings;
import rindward.hardware.wired.GpioDriver;
import rindward.hardware.wired.NetworkRelayDriver;

/**
 * Refuses what can never be right, on whatever farm. What may be right somewhere is said by {@link
 * SafetyAdvice} instead, so that a shed which ran well by its file goes on starting.
 */
final class Contradictions {
  private Contradictions() {}

  /** Refuses lines that a bus of the same file needs, and relays that hear only themselves. */
  static void refuse(
      TableReader top,
      List<ProbeSetting> probes,
      List<OutputSetting> outputs,
      @Nullable GpioDriver heartbeat) {
    Map<String, String> commanded = new HashMap<>();
    for (OutputSetting output : outputs) {
      if (output.driver() instanceof GpioDriver gpio) {
        refuseBusLine(top, gpio.line(), probes, "outputs", output.name(), "line");
      } else if (output.driver() instanceof NetworkRelayDriver relay) {
        commanded.put(relay.settings().commandTopic(), output.name());
      }
    }
    if (heartbeat != null) {
      refuseBusLine(top, heartbeat.line(), probes, Safety.HEARTBEAT, "line");
    }
    for (OutputSetting output : outputs) {
      if (output.driver() instanceof NetworkRelayDriver relay) {
        refuseEcho(top, output.name(), relay.settings(), commanded);
      }
    }
  }

  /** Refuses a heater that is told to wait for a fan that is not there, or for no air probe. */
  static void refuseHeat(
      TableReader room, boolean needsFan, List<ProbeSetting> own, Map<OutputKind, Output> outputs) {
    if (!outputs.containsKey(OutputKind.HEATER)) {
      return;
    }
    boolean hasFan = outputs.containsKey(OutputKind.CIRCULATION);
    if (room.has("heater_needs_fan") && needsFan && !hasFan) {
      room.refuse(
          "heater_needs_fan",
          "the room has no output of kind \"circulation\": it must have one, or be false for a"
              + " heater with a fan of its own");
    }
    if (!own.isEmpty() && own.stream().allMatch(p -> p.place() == ProbePlace.PULP)) {
      room.problem(
          "purpose",
          room.path("probe")
              + " was only in a fruit but a room with a heater must have one in its air, for a"
              + " fruit warms hours after the room");
    }
  }

  private static void refuseBusLine(
      TableReader top, int line, List<ProbeSetting> probes, String... way) {
    if (BoardLines.isOfI2c(line, probes)) {
      top.conflict(
          String.valueOf(line),
          "it must be another line, for a probe of this file uses GPIO 2 and 3 as I2C bus 1",
          way);
    }
  }

  /** A relay that answers where it is commanded is heard to be on although nobody is there. */
  private static void refuseEcho(
      TableReader top,
      String output,
      NetworkRelaySettings relay,
      Map<String, String> commandedByTopic) {
    String commanded = commandedByTopic.get(relay.stateTopic());
    if (commanded != null) {
      top.conflict(
          relay.stateTopic(),
          "it must differ from the command_topic of outputs."
              + commanded
              + ", or a command is taken for the relay's own word",
          "outputs",
          output,
          "state_topic");
    }
  }
}
