package rindward.controller.command.shed;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.daemon.Time;
import rindward.controller.link.ControlReport;
import rindward.controller.link.HeardControl;
import rindward.controller.link.SocketPlace;
import rindward.controller.settings.Settings;

/** {@code health}: whether control runs the shed, asked of control itself. */
@Command(
    name = "health",
    description = {
      "Say whether control looks at the rooms, which probes give values, and whether the record is",
      "written. Waits for the next look. Ends with 0 when all is well, with 1 when it is not."
    },
    footer = {"", "Example:", "  rindward health --settings /etc/rindward/rindward.toml"})
public final class HealthCommand extends ShedCommand {
  /** A look may come late by one, and a start takes some seconds. */
  private static final Duration GRACE = Duration.ofSeconds(10);

  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean isJson;

  @Option(
      names = "--as",
      paramLabel = "FILE",
      description = "Also end with 1 when something is lost of what --json once put into FILE.")
  private @Nullable Path before;

  @Override
  protected int on(Settings settings) throws IOException {
    Time time = Time.system();
    Health health;
    try (HeardControl control =
        new HeardControl(
            SocketPlace.of(settings.store()), settings.tick(), () -> time.now().nanos())) {
      health = ask(control, settings.tick().multipliedBy(2).plus(GRACE), time);
    }
    Optional<Health> earlier =
        before == null ? Optional.empty() : Optional.of(JsonOutput.read(before, Health.class));
    List<String> said = health.sentences(earlier);
    PrintWriter out = out();
    if (isJson) {
      JsonOutput.print(out, health);
    } else {
      print(out, health, said);
    }
    boolean isAsBefore = earlier.map(health::lostSince).map(List::isEmpty).orElse(true);
    return health.isWell() && isAsBefore ? ExitCode.FINE : ExitCode.NOT_WELL;
  }

  private static Health ask(HeardControl control, Duration patience, Time time) throws IOException {
    long end = time.now().nanos() + patience.toNanos();
    @Nullable ControlReport first = null;
    @Nullable ControlReport last = null;
    while (time.now().nanos() < end) {
      control.turn();
      last = control.latest();
      first = first == null ? last : first;
      if (first != null && last != null && last.snapshot().tick() > first.snapshot().tick()) {
        break;
      }
    }
    return Health.of(first, last, control.silence());
  }

  private static void print(PrintWriter out, Health health, List<String> said) {
    if (health.answers()) {
      out.printf("control  %s%n", health.ticks() ? "looks at the rooms" : "does not look");
      out.printf(
          "probes   %d give values%s%n",
          health.probes().size(),
          health.silentProbes().isEmpty()
              ? ""
              : "; none from " + String.join(", ", health.silentProbes()));
      out.printf("outputs  %d in control's hands%n", health.outputs().size());
      out.printf("record   %s%n", health.keeps() ? "is written" : "is not written");
    }
    said.forEach(out::println);
    out.flush();
  }
}
