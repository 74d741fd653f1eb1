package rindward.controller.command.shed;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.crop.Limits;
import rindward.controller.daemon.Time;
import rindward.controller.journal.EntryKinds;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Room;
import rindward.controller.settings.NetworkAdvice;
import rindward.controller.settings.PageSetting.TlsSetting;
import rindward.controller.settings.SafetyAdvice;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.settings.SettingsAdvice;
import rindward.controller.store.Schema;
import rindward.dashboard.ServerIdentity;
import rindward.hardware.Thousandths;

/** {@code check}: what a settings file says, and everything that is wrong with it. */
@Command(
    name = "check",
    description =
        "Say what a settings file means, and everything that is wrong with it. Opens nothing that"
            + " switches.",
    footer = {"", "Example:", "  rindward check --settings controller/examples/shed.toml"})
public final class CheckCommand extends ShedCommand {
  @Option(names = "--live", description = "Also read every probe once and print what it says.")
  private boolean isLive;

  @Option(
      names = "--strict",
      description = "End with 1 where there is any warning, so that nothing unsafe is installed.")
  private boolean isStrict;

  private final Supplier<Instant> clock;

  public CheckCommand() {
    this(() -> Time.system().now().at());
  }

  /**
   * @param clock tells the present moment, by which what was tried is old
   */
  public CheckCommand(Supplier<Instant> clock) {
    this.clock = clock;
  }

  @Override
  protected int on(Settings settings) throws IOException {
    PrintWriter out = out();
    out.printf(
        "%s, %s, %d m above the sea%n", settings.siteName(), settings.zone(), settings.altitudeM());
    out.printf(
        "  looks every %d s; a sample counts for at most %d s%n",
        settings.tick().toSeconds(), settings.hold().toSeconds());
    out.printf("  keeps everything in %s%n", settings.store());
    out.printf(
        "  copies every night to %s%s%n",
        settings.backups(),
        settings.elsewhere() == null
            ? ", and nowhere else: what happens to the board happens to them"
            : ", and each of them to " + settings.elsewhere());
    out.printf(
        "  record of schema %d; %d kinds of entries, the newest of version %d%n",
        Schema.newest(), EntryKinds.ALL.size(), EntryKinds.newestVersion());
    out.printf("  page at %s%n", settings.page().url(settings.page().port()));
    TlsSetting tls = settings.page().tls();
    if (tls != null) {
      try {
        Instant until = ServerIdentity.read(tls.certificate(), tls.key()).until();
        out.printf("  certificate until %s%n", until.atZone(settings.zone()).toLocalDate());
      } catch (IOException e) {
        return complain("dashboard." + e.getMessage(), ExitCode.WRONG_USAGE);
      }
    }
    out.printf("  crop guide: %d types%n", settings.crops().keys().size());
    for (Room room : settings.rooms()) {
      print(out, settings, room);
    }
    for (String advice : SettingsAdvice.of(settings)) {
      out.printf("%nNote: %s%n", advice);
    }
    LocalDate today = LocalDate.ofInstant(clock.get(), settings.zone());
    List<String> warnings = new ArrayList<>(SafetyAdvice.of(settings, today));
    warnings.addAll(NetworkAdvice.of(settings));
    warnings.addAll(TriedParts.unproven(settings, clock.get()));
    for (String warning : warnings) {
      out.printf("%nWarning: %s%n", warning);
    }
    out.flush();
    int live =
        isLive ? new LiveCheck(TriedParts.in(settings), Time.system(), out).run() : ExitCode.FINE;
    return isStrict && !warnings.isEmpty() ? ExitCode.NOT_WELL : live;
  }

  private static void print(PrintWriter out, Settings settings, Room room) {
    out.printf(
        "%nRoom %s (%s): %s C, %s %%%s%n",
        room.name(),
        room.purpose().word(),
        span(room.range().temperature()),
        span(room.range().humidity()),
        room.observeOnly() ? ", only observed" : "");
    settings.probes().stream()
        .filter(p -> p.room().equals(room.name()))
        .forEach(p -> out.printf("  probe  %-20s %s%n", p.name(), meaning(p)));
    if (room.outputs().isEmpty()) {
      out.printf("  no outputs: this room can only be watched%n");
    }
    out.print(
        room.outputs().values().stream()
            .map(
                o ->
                    String.format(
                        Locale.ROOT,
                        "  output %-20s %s, at least %d s on and %d s off%n",
                        o.name(),
                        o.kind().word(),
                        o.minimumOn().toSeconds(),
                        o.minimumOff().toSeconds()))
            .collect(Collectors.joining()));
  }

  private static String meaning(ProbeSetting probe) {
    Accuracy accuracy = probe.accuracy();
    String humidity =
        probe.driver().hasHumidity() ? ", +-" + plain(accuracy.humidityMilliPct()) + " %" : "";
    return probe.driver().word()
        + " ("
        + probe.driver().place()
        + "), +-"
        + plain(accuracy.temperatureMilliC())
        + " C"
        + humidity;
  }

  private static String span(Limits limits) {
    return plain(limits.low()) + "-" + plain(limits.high());
  }

  private static String plain(int thousandths) {
    String text = String.format(Locale.ROOT, "%.1f", Thousandths.toDouble(thousandths));
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
