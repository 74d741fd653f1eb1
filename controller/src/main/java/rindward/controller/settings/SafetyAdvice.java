package rindward.controller.settings;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.room.Contact;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.controller.settings.HighLimit.Reset;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.Safety;
import rindward.hardware.OutputKind;
import rindward.hardware.wired.GpioDriver;
import rindward.hardware.wired.Simulated;

/**
 * What a settings file may say and an electrician would not accept without a word: each in one
 * sentence that names the key, what was wrong and what would be right. The shed starts
 * nevertheless, for somebody may have his reason, and one that ran well yesterday must run
 * tomorrow.
 */
public final class SafetyAdvice {
  /** Common practice: where a curing room's limit is set; hardware/SAFETY.md says why. */
  private static final int ADVISED_LIMIT_MILLI_C = 40_000;

  /** Our judgement: five more than advised, for a limit that trips on a warm day is bridged. */
  private static final int HIGHEST_LIMIT_MILLI_C = 45_000;

  /** 16 A at 230 V, the usual final circuit of IEC countries; at 120 V it is half of that. */
  private static final int CIRCUIT_W = 3_680;

  /** Our judgement: a contact that closes faster than each tick is worn out within a season. */
  private static final long SHORTEST_REST_SECONDS = 10;

  private final Settings settings;
  private final LocalDate today;
  private final List<String> advice = new ArrayList<>();

  private SafetyAdvice(Settings settings, LocalDate today) {
    this.settings = settings;
    this.today = today;
  }

  /**
   * Returns one sentence for each thing; empty when there is nothing to say.
   *
   * @param today in the farm's zone, by which a limit's trial is old
   */
  public static List<String> of(Settings settings, LocalDate today) {
    SafetyAdvice of = new SafetyAdvice(settings, today);
    settings.rooms().forEach(of::room);
    settings.outputs().forEach(of::line);
    of.heartbeat();
    return List.copyOf(of.advice);
  }

  private void room(Room room) {
    String path = "rooms." + room.name() + ".";
    boolean isHeated = room.has(OutputKind.HEATER);
    if (isHeated && room.heatTrust().needsFan() && !room.has(OutputKind.CIRCULATION)) {
      say(
          path + "heater_needs_fan",
          "was left out, and the room has a heater and no circulation fan",
          "it must have one, or be false for a heater with a fan of its own");
    }
    @Nullable HighLimit limit = settings.safety().highLimits().get(room.name());
    int opensMilliC = limit == null ? ADVISED_LIMIT_MILLI_C : limit.temperatureMilliC();
    int warmestMilliC = room.range().temperature().high();
    if (isHeated && warmestMilliC >= opensMilliC) {
      say(
          path + "temperature",
          "ends at " + Kind.plain(warmestMilliC) + " C",
          "must end below its high limit, "
              + Kind.plain(opensMilliC)
              + " C"
              + (limit == null ? " where none is declared" : ""));
    }
    if (limit != null) {
      limit(path + "high_limit.", limit);
    } else if (isReal(room, OutputKind.HEATER)) {
      say(
          path + "high_limit",
          "is missing",
          "a room with a real heater must have one that works without this program, for example {"
              + " temperature = 40, reset = \"by-hand\", hangs = \"ceiling\", tried = "
              + today
              + " }");
    }
    room.outputs().values().forEach(this::output);
  }

  private void limit(String path, HighLimit limit) {
    if (limit.temperatureMilliC() > HIGHEST_LIMIT_MILLI_C) {
      say(
          path + "temperature",
          "was '" + Kind.plain(limit.temperatureMilliC()) + "'",
          "it must be at most " + Kind.plain(HIGHEST_LIMIT_MILLI_C) + " C to protect a room");
    }
    if (limit.reset() == Reset.BY_ITSELF) {
      say(
          path + "reset",
          "was 'by-itself'",
          "it must be by hand, or a heater that does not stop goes on and off at the limit unseen");
    }
    @Nullable LocalDate tried = limit.tried();
    if (tried == null) {
      say(path + "tried", "is missing", "it must be the day on which you saw the limit open");
    } else if (tried.isAfter(today)) {
      say(path + "tried", "was '" + tried + "'", "it must not be yet to come");
    } else if (tried.isBefore(today.minusYears(1))) {
      say(
          path + "tried",
          "was '" + tried + "'",
          "it must be within the last year: try the limit again");
    }
  }

  private void output(Output output) {
    String path = "outputs." + output.name() + ".";
    if (output.powerW() > CIRCUIT_W) {
      say(
          path + "power_w",
          "was '" + output.powerW() + "'",
          "a circuit of 16 A carries "
              + CIRCUIT_W
              + " W at 230 V and half of that at 120 V: it must be less, or an electrician's own"
              + " circuit and contactor");
    }
    if (output.contact() == Contact.RELAY) {
      rest(path + "minimum_on", output.minimumOn().toSeconds());
      rest(path + "minimum_off", output.minimumOff().toSeconds());
    }
  }

  private void rest(String key, long seconds) {
    if (seconds < SHORTEST_REST_SECONDS) {
      say(
          key,
          "was '" + seconds + " s'",
          "a mechanical contact must rest at least "
              + SHORTEST_REST_SECONDS
              + " s; only contact = \"solid-state\" may switch at every tick");
    }
  }

  private void line(OutputSetting output) {
    if (output.driver() instanceof GpioDriver gpio) {
      String key = "outputs." + output.name() + ".line";
      sharedLine(key, gpio.line());
      if (gpio.active().mayBeOnAtBoot(gpio.line())) {
        say(
            key,
            "was '" + gpio.line() + "' (on when " + Kind.word(gpio.active()) + ")",
            "it may be on while the board starts and nobody drives the line: it must be one that"
                + " the table of relay lines in hardware/README.md calls safe");
      }
    }
  }

  private void heartbeat() {
    @Nullable GpioDriver heartbeat = settings.safety().heartbeat();
    if (heartbeat != null) {
      sharedLine(Safety.HEARTBEAT + ".line", heartbeat.line());
    } else if (settings.rooms().stream().anyMatch(room -> isReal(room, OutputKind.HEATER))) {
      say(
          Safety.HEARTBEAT,
          "is missing",
          "a real heater must end when this program hangs: it must be a table [heartbeat] with the"
              + " line of the relay in hardware/WIRING.md");
    }
  }

  private void sharedLine(String key, int line) {
    String was = "was '" + line + "'";
    if (BoardLines.isUsuallyOneWire(line, settings.probes())) {
      say(
          key,
          was,
          "the 1-Wire probes of this file use GPIO 4 unless their overlay names another: it must be"
              + " a line of its own");
    }
    if (BoardLines.isUsuallyConsole(line)) {
      say(
          key,
          was,
          "the serial console uses GPIO 14 and 15 unless it is switched off: it must be a line of"
              + " its own");
    }
  }

  private boolean isReal(Room room, OutputKind kind) {
    @Nullable Output output = room.outputs().get(kind);
    return output != null
        && settings.outputs().stream()
            .filter(o -> o.name().equals(output.name()))
            .anyMatch(o -> !(o.driver() instanceof Simulated));
  }

  private void say(String key, String wrong, String right) {
    advice.add(key + " " + wrong + " but " + right + ".");
  }
}
