package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The settings of a shed with real parts, written once: a farm with one storage room, so that a
 * test names only the parts that it is about.
 */
public record BoardFile(Path path) {
  /** The serial number of the one probe on the 1-Wire bus. */
  public static final String SERIAL = "28-0316a2791bff";

  /** The room's air, from a sensor that the kernel reads. */
  public static final String AIR =
      """
      [probes.air]
      room = "store"
      driver = "hwmon"
      device = "sht3x"
      accuracy = { temperature = 0.3, humidity = 3 }
      """;

  /** The room's air, from a probe on the 1-Wire bus, which knows no humidity. */
  public static final String AIR_ON_1_WIRE =
      """
      [probes.air]
      room = "store"
      driver = "1-wire"
      serial = "%s"
      """
          .formatted(SERIAL);

  /** A probe in a fruit, on the 1-Wire bus. */
  public static final String FRUIT =
      """
      [probes.fruit]
      room = "store"
      place = "pulp"
      driver = "1-wire"
      serial = "%s"
      """
          .formatted(SERIAL);

  /** A broker that is not there, as nobody listens on port 1, and a heater reached by it. */
  public static final String HEATER_ON_NETWORK =
      """
      [broker]
      host = "127.0.0.1"
      port = 1

      [outputs.heater]
      room = "store"
      kind = "heater"
      driver = "mqtt"
      command_topic = "heater/command"
      state_topic = "heater/state"
      auto_off = "60s"
      """;

  private static final String ROOM =
      """
      [site]
      name = "Hollin Bank Farm"
      time_zone = "UTC"

      [control]

      [store]
      file = "rindward.db"

      [dashboard]

      [rooms.store]
      purpose = "storage"
      temperature = [10, 13]
      humidity = [50, 70]

      """;

  /** Writes the settings into a folder, with these parts, over those that were there before. */
  public static BoardFile in(Path folder, String... parts) throws IOException {
    return new BoardFile(
        Files.writeString(folder.resolve("board.toml"), ROOM + String.join("\n", parts)));
  }

  /** A heater on a line of the board. */
  public static String heater(int line) {
    return output("heater", "heater", line);
  }

  /** A fan on a line of the board. */
  public static String fan(int line) {
    return output("fan", "circulation", line);
  }

  /** Reads what was written, in which nothing may be wrong. */
  public Settings settings() {
    Problems problems = new Problems();
    Optional<Settings> settings = SettingsReader.read(path, problems);
    assertThat(problems.list()).isEmpty();
    return settings.orElseThrow();
  }

  private static String output(String name, String kind, int line) {
    return """
    [outputs.%s]
    room = "store"
    kind = "%s"
    driver = "gpio"
    active = "high"
    line = %d
    """
        .formatted(name, kind, line);
  }
}
