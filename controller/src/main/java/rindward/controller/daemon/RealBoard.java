package rindward.controller.daemon;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rindward.controller.settings.OffList;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.BrokerSetting;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.hardware.mqtt.BrokerSettings;
import rindward.hardware.wired.LinuxMachine;
import rindward.hardware.wired.Machine;
import rindward.hardware.wired.WiredBoard;
import rindward.hardware.wired.WiredBoard.Input;
import rindward.hardware.wired.WiredBoard.Output;

/** Opens the real parts that a settings file names: all of them, or as many as a command needs. */
public final class RealBoard {
  /** Where the kernel shows its devices; the installed program is tried on a folder of files. */
  private static final Path SYSFS = Path.of(System.getProperty("rindward.sysfs", "/sys"));

  /** How long a word to the broker may take. */
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final Settings settings;
  private final Machines machines;

  /** Gives a machine for one board, which closes it. */
  @FunctionalInterface
  public interface Machines {
    Machine next();
  }

  /** Who is at the broker: each with a name and topics of its own, so that none pushes another. */
  private enum Guest {
    RUN,
    CHECK,
    TRIAL,
    OFF
  }

  public RealBoard(Settings settings, Machines machines) {
    this.settings = settings;
    this.machines = machines;
  }

  /** Returns the board of this machine. */
  public static RealBoard of(Settings settings, Time time) {
    return new RealBoard(settings, machines(time));
  }

  /** Returns this machine, as often as somebody wants it. */
  public static Machines machines(Time time) {
    return () -> new LinuxMachine(SYSFS, () -> time.now().nanos(), () -> time.now().at());
  }

  /**
   * Opens everything, every output off.
   *
   * @throws IOException in one sentence, when an output cannot be opened
   */
  public WiredBoard open() throws IOException {
    return open(Guest.RUN, settings.outputs(), inputs());
  }

  /**
   * Opens the probes and nothing that switches.
   *
   * @throws IOException in one sentence, when the broker's password cannot be read
   */
  public WiredBoard openProbes() throws IOException {
    return open(Guest.CHECK, List.of(), inputs());
  }

  /**
   * Opens one output, off, and nothing else, and lets go of it when it has heard so.
   *
   * @param machine closed in the end
   * @throws IOException in one sentence, when it cannot be opened or reached
   */
  public static void switchOff(Machine machine, OffList.Part part) throws IOException {
    OutputSetting output = part.output();
    BrokerSetting broker = part.broker();
    try (WiredBoard opened =
        WiredBoard.open(
            machine,
            broker == null ? null : broker(broker, Guest.OFF),
            List.of(new Output(output.name(), output.driver())),
            List.of())) {
      opened.relay(output.name()).set(false);
      if (!opened.sayAll(PATIENCE)) {
        throw new IOException(opened.brokerTrouble());
      }
    }
  }

  /** Tells whether the heaters stand behind a relay that must be kept by a heartbeat. */
  public boolean hasHeartbeat() {
    return settings.safety().heartbeat() != null;
  }

  /**
   * Opens these outputs, off, and the heartbeat if there is one; nothing else.
   *
   * @throws IOException in one sentence, when one cannot be opened
   */
  public WiredBoard openForTrial(List<OutputSetting> outputs) throws IOException {
    return open(Guest.TRIAL, outputs, List.of());
  }

  private WiredBoard open(Guest guest, List<OutputSetting> outputs, List<Input> inputs)
      throws IOException {
    boolean needsBroker =
        outputs.stream().anyMatch(o -> o.driver().needsBroker())
            || inputs.stream().anyMatch(i -> i.driver().needsBroker());
    BrokerSetting broker = settings.broker();
    return WiredBoard.open(
        machines.next(),
        broker == null || !needsBroker ? null : broker(broker, guest),
        withHeartbeat(guest, outputs),
        inputs);
  }

  /** Whoever switches needs it: without it the contactor before the heaters stays open. */
  private List<Output> withHeartbeat(Guest guest, List<OutputSetting> outputs) {
    List<Output> all = new ArrayList<>();
    outputs.forEach(o -> all.add(new Output(o.name(), o.driver())));
    if (guest == Guest.RUN || guest == Guest.TRIAL) {
      settings.safety().asOutput().ifPresent(o -> all.add(new Output(o.name(), o.driver())));
    }
    return all;
  }

  private List<Input> inputs() {
    return settings.probes().stream()
        .map(p -> new Input(p.name(), p.driver(), p.offset()))
        .toList();
  }

  private static BrokerSettings broker(BrokerSetting broker, Guest guest) throws IOException {
    String part = guest == Guest.RUN ? "" : "-" + guest.name().toLowerCase(Locale.ROOT);
    return new BrokerSettings(
        broker.uri(),
        "rindward-" + broker.site() + part,
        broker.user(),
        password(broker.passwordFile()),
        "rindward/" + broker.site() + part,
        broker.authority());
  }

  static String password(@Nullable Path file) throws IOException {
    if (file == null) {
      return "";
    }
    try {
      return Files.readString(file).strip();
    } catch (IOException e) {
      throw new IOException(
          "broker.password_file was '" + file + "' but it must be a file that we may read", e);
    }
  }
}
