package rindward.dashboard;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import rindward.dashboard.shed.ManualCommand;
import rindward.dashboard.shed.ShedDesk;
import rindward.dashboard.shed.ShedView;
import rindward.dashboard.shed.ShedView.HealthView;
import rindward.dashboard.shed.ShedView.ManualView;
import rindward.dashboard.shed.ShedView.OutputView;
import rindward.dashboard.shed.ShedView.ProbeView;
import rindward.dashboard.shed.SwitchingRefused;

/** A shed whose heater may be switched by hand and whose humidifier may not. */
final class InventedParts implements ShedDesk {
  private static final String HEATER = "heater";

  private final Instant at;
  private final List<ManualCommand> commands = new ArrayList<>();
  private ManualCommand inForce;

  InventedParts(Instant at) {
    this.at = at;
  }

  /** Returns every command that was carried out. */
  synchronized List<ManualCommand> commands() {
    return List.copyOf(commands);
  }

  @Override
  public synchronized void command(ManualCommand command) throws SwitchingRefused {
    if (command.kind().equals("humidifier") && command.on()) {
      throw new SwitchingRefused(
          "The humidifier stays off: the air is at 79 % already, and 80 % is the safe limit.");
    }
    if (!command.kind().equals(HEATER)) {
      throw new SwitchingRefused("There is no such output.");
    }
    commands.add(command);
    inForce = command;
  }

  @Override
  public synchronized void release(String room, String kind, String by) {
    inForce = null;
  }

  @Override
  public Instant now() {
    return at;
  }

  @Override
  public synchronized ShedView shed() {
    return new ShedView(at, probes(), outputs(), health(), Duration.ofHours(24).toMinutes());
  }

  private List<OutputView> outputs() {
    boolean on = inForce == null || inForce.on();
    ManualView manual = inForce == null ? null : new ManualView(on, inForce.until(), inForce.by());
    String reason =
        inForce == null ? "0.3 degrees below the middle of its range" : "switched by hand";
    return List.of(
        new OutputView("Curing room", "Heater", HEATER, on, reason, manual, null),
        new OutputView(
            "Curing room", "Fan", "circulation", true, "runs whenever the heater does", null, null),
        new OutputView(
            "Curing room",
            "Humidifier",
            "humidifier",
            false,
            "humidity is in its range",
            null,
            null),
        new OutputView(
            "Keeping room",
            "Exhaust",
            "exhaust",
            false,
            "the air outside is damper",
            null,
            "It cannot be switched: its relay board does not answer. Check the plug."));
  }

  private static List<ProbeView> probes() {
    return List.of(
        new ProbeView("curing-air", "Curing room", "air", 27.4, 79.2, 6L, null),
        new ProbeView("curing-corner", "Curing room", "corner", 26.1, 82.0, 6L, null),
        new ProbeView("squash-heart", "Curing room", "pulp", 25.2, null, 9L, null),
        new ProbeView(
            "keeping-door",
            "Keeping room",
            "air",
            11.8,
            76.0,
            840L,
            "It does not answer any more, and is not used; check its cable."),
        new ProbeView("outside", null, "outdoor", 8.3, 91.0, 9L, null));
  }

  private static List<HealthView> health() {
    return List.of(
        new HealthView("Control", "looked at the rooms 41,203 times; none was late", false),
        new HealthView("Record", "what is measured reaches the disk", false),
        new HealthView("Version", "0.2.0", false));
  }
}
