package rindward.controller.settings;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import rindward.hardware.OutputKind;
import rindward.hardware.mqtt.NetworkRelaySettings;
import rindward.hardware.mqtt.PayloadField;
import rindward.hardware.pi4j.ActiveLevel;
import rindward.hardware.wired.GpioDriver;
import rindward.hardware.wired.NetworkRelayDriver;
import rindward.hardware.wired.RelayDriver;
import rindward.hardware.wired.Simulated;

/** Reads what an output hangs on: the driver's word, and the keys that this driver needs. */
final class RelayDriverReader {
  private static final Kind<String> WORD = Kind.word(List.of("simulated", "gpio", "mqtt"));

  /** The longest that a heater may stay on after the last command reached it. */
  private static final Kind<Duration> AUTO_OFF =
      Kind.duration(Duration.ofSeconds(2), Duration.ofSeconds(60));

  private RelayDriverReader() {}

  /**
   * Reads the driver; empty where its word is missing or none, so that no key can be judged.
   *
   * @param kind what the output does
   * @param tick how often its command is repeated
   */
  static Optional<RelayDriver> read(TableReader table, OutputKind kind, Duration tick) {
    if (!table.has("driver")) {
      table.missing("driver", "it must " + WORD.must());
      return Optional.empty();
    }
    return table
        .find("driver", WORD)
        .map(
            word ->
                switch (word) {
                  case "gpio" -> gpio(table);
                  case "mqtt" -> network(table, kind, tick);
                  default -> new Simulated();
                });
  }

  /** Returns what two outputs must not share, whatever else their drivers say. */
  static String place(RelayDriver driver) {
    return driver instanceof GpioDriver gpio ? "GPIO " + gpio.line() : driver.place();
  }

  private static RelayDriver gpio(TableReader table) {
    return new GpioDriver(
        table.required("line", Kind.whole(0, 27)),
        table.required("active", Kind.choice(ActiveLevel.class)));
  }

  private static RelayDriver network(TableReader table, OutputKind kind, Duration tick) {
    autoOff(table, kind, tick);
    String on = table.optional("on", Kind.TEXT, "ON");
    String off = table.optional("off", Kind.TEXT, "OFF");
    if (on.equals(off)) {
      table.refuse("off", "it must differ from what switches on");
      off = on + "?";
    }
    return new NetworkRelayDriver(
        new NetworkRelaySettings(
            table.name(),
            table.required("command_topic", Network.TOPIC),
            on,
            off,
            table.required("state_topic", Network.TOPIC),
            table.optional("state_at", Network.FIELD, PayloadField.WHOLE),
            table.optional("max_age", Network.MAX_AGE, Duration.ofMinutes(5))));
  }

  /** The relay's own timer is all that ends the heat when nothing reaches it any more. */
  private static void autoOff(TableReader table, OutputKind kind, Duration tick) {
    if (kind == OutputKind.HEATER && !table.has("auto_off")) {
      table.missing(
          "auto_off",
          "a heater behind the network must have a relay that switches itself off when it hears"
              + " nothing; set its timer and say here to what, for example \"60s\"");
    }
    table
        .find("auto_off", AUTO_OFF)
        .filter(time -> time.compareTo(tick.multipliedBy(2)) < 0)
        .ifPresent(
            time ->
                table.refuse(
                    "auto_off",
                    "it must be at least twice control.tick, which is how often we are heard"));
  }
}
