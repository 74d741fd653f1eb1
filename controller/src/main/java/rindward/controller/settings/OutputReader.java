package rindward.controller.settings;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rindward.controller.room.Contact;
import rindward.controller.room.Output;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.Safety;
import rindward.hardware.OutputKind;
import rindward.hardware.wired.GpioDriver;
import rindward.hardware.wired.RelayDriver;
import rindward.hardware.wired.Simulated;

/** Reads the outputs of a settings file: one of a kind in a room, one output a line or topic. */
final class OutputReader {
  private static final Kind<Duration> MINIMUM = Kind.duration(Duration.ZERO, Duration.ofHours(1));
  private static final Kind<Integer> CONTACT_LIFE = Kind.whole(1, 100_000_000);
  private static final Duration USUAL = Duration.ofMinutes(1);

  private final Map<String, TableReader> rooms;
  private final Duration tick;
  private final Map<String, Map<OutputKind, Output>> byRoom = new LinkedHashMap<>();
  private final List<OutputSetting> settings = new ArrayList<>();
  private final Map<String, String> places = new HashMap<>();

  /**
   * @param rooms those that the file declares
   * @param tick how often each command is repeated
   */
  OutputReader(Map<String, TableReader> rooms, Duration tick) {
    this.rooms = rooms;
    this.tick = tick;
  }

  /** Reads every table of {@code outputs}. */
  void read(Map<String, TableReader> outputs) {
    outputs.values().forEach(this::output);
  }

  /** Returns what each output hangs on, in the order of the file. */
  List<OutputSetting> settings() {
    return settings;
  }

  /** Returns the outputs of a room. */
  Map<OutputKind, Output> of(String room) {
    return byRoom.getOrDefault(room, Map.of());
  }

  /** Sees to it that the heartbeat has a line and a name of its own. */
  void claimHeartbeat(TableReader table, GpioDriver driver) {
    String other = places.get(RelayDriverReader.place(driver));
    if (other != null) {
      table.refuse("line", "it must not be the line of outputs." + other + " too");
    }
    if (settings.stream().anyMatch(o -> o.name().equals(Safety.HEARTBEAT))) {
      table.refuse("line", "no output may have the name heartbeat then");
    }
  }

  private void output(TableReader table) {
    String room = RoomName.read(table, rooms);
    OutputKind kind = table.required("kind", Kind.choice(OutputKind.class));
    Output output =
        new Output(
            table.name(),
            kind,
            table.optional("contact", Kind.choice(Contact.class), Contact.RELAY),
            table.optional("minimum_on", MINIMUM, USUAL),
            table.optional("minimum_off", MINIMUM, USUAL),
            table.optional("power_w", Kind.whole(0, 20_000), 0),
            table.optional("capacity", Kind.thousandths(0, 20_000_000), 0));
    int contactLife = table.optional("contact_life", CONTACT_LIFE, 0);
    Output other =
        byRoom
            .computeIfAbsent(room, r -> new EnumMap<>(OutputKind.class))
            .putIfAbsent(kind, output);
    if (other != null) {
      table.refuse("kind", "room " + room + " has one already: " + other.name());
    }
    Optional<RelayDriver> driver = RelayDriverReader.read(table, kind, tick);
    if (driver.isPresent()) {
      table.rejectUnknown();
      claim(table, driver.get());
    }
    settings.add(
        new OutputSetting(table.name(), room, driver.orElse(new Simulated()), contactLife));
  }

  private void claim(TableReader table, RelayDriver driver) {
    if (driver instanceof Simulated) {
      return;
    }
    String other = places.putIfAbsent(RelayDriverReader.place(driver), table.name());
    if (other != null) {
      table.problem(
          "driver",
          "outputs."
              + table.name()
              + " was "
              + driver.place()
              + " but it must not be the part of outputs."
              + other
              + " too");
    }
  }
}
