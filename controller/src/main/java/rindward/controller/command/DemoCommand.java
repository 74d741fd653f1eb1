package rindward.controller.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.Rehearsal;
import rindward.controller.lot.Entry;
import rindward.controller.lot.Entry.Harvested;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.dashboard.rooms.NowView;

/** {@code demo}: an invented farm on a simulated shed, without hardware and without set-up. */
@Command(
    name = "demo",
    description =
        "Show an invented farm: a simulated shed with a few days behind it, then live. Everything"
            + " is in a temporary folder.",
    footer = {"", "Examples:", "  rindward demo", "  rindward demo --once --json"})
final class DemoCommand implements Callable<Integer> {
  private static final Duration HISTORY = Duration.ofDays(4);

  @Spec private CommandSpec spec;

  @Option(names = "--once", description = "Print one status and end.")
  private boolean once;

  @Option(names = "--json", description = "Print the status as one JSON object.")
  private boolean json;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "Port of the page; 8420 if not given.")
  private @Nullable Integer port;

  @Option(
      names = "--speed",
      paramLabel = "N",
      description = "Times faster than life; 10 if not given.")
  private int speed = 10;

  @Override
  public Integer call() throws IOException, InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    Path folder = Files.createTempDirectory("rindward-demo");
    Settings settings = settings(folder);
    Instant now = Instant.now();
    Rehearsal rehearsal = new Rehearsal(settings, now.minus(HISTORY));
    say(rehearsal.daemon(), lots(now.minus(HISTORY)), now.minus(HISTORY));
    rehearsal.load("curing", "KB1", 92);
    rehearsal.load("curing", "BN1", 110);
    rehearsal.load("storage", "AC1", 30);
    rehearsal.advance(HISTORY);
    if (once) {
      NowView view = rehearsal.daemon().desk().now();
      if (json) {
        JsonOutput.print(out, view);
      } else {
        print(out, view);
      }
      rehearsal.daemon().close();
      return Main.FINE;
    }
    CountDownLatch stopped = new CountDownLatch(1);
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> {
                  rehearsal.daemon().close();
                  stopped.countDown();
                },
                "stop"));
    Daemon daemon = rehearsal.live(speed);
    print(out, daemon.desk().now());
    if (daemon.port() > 0) {
      out.printf("%nThe page: http://127.0.0.1:%d/   (Ctrl-C ends the demo)%n", daemon.port());
    } else {
      out.printf(
          "%nThere is no page, see above; --port takes another one. Ctrl-C ends the demo.%n");
    }
    out.flush();
    stopped.await();
    return Main.FINE;
  }

  private Settings settings(Path folder) throws IOException {
    Path file = folder.resolve("shed.toml");
    try (InputStream in = DemoCommand.class.getResourceAsStream("shed.toml")) {
      if (in == null) {
        throw new IllegalStateException("shed.toml is missing from the jar");
      }
      Files.copy(in, file);
    }
    if (port != null) {
      Files.writeString(file, Files.readString(file).replace("port = 8420", "port = " + port));
    }
    Problems problems = new Problems();
    return SettingsReader.read(file, problems)
        .orElseThrow(() -> new IllegalStateException("the demo's settings: " + problems.list()));
  }

  private static List<Entry> lots(Instant at) {
    return List.of(
        new Harvested("KB1", "kabocha", "Winterglut", 46, "curing", at),
        new Harvested("BN1", "butternut", "Long Meg", 60, "curing", at.plusSeconds(7_200)),
        new Harvested("AC1", "acorn", "Green Pleat", 38, "storage", at.plusSeconds(9_000)));
  }

  private static void say(Daemon daemon, List<Entry> entries, Instant now) {
    for (Entry entry : entries) {
      daemon
          .door()
          .say(
              entry,
              "Wren",
              "demo-" + entry.subject(),
              OptionalLong.empty(),
              now.plus(Duration.ofDays(1)))
          .refusal()
          .ifPresent(
              refusal -> {
                throw new IllegalStateException(refusal);
              });
    }
  }

  private static void print(PrintWriter out, NowView view) {
    out.printf("%s: %s%n%n", view.siteName(), view.health());
    for (NowView.RoomView room : view.rooms()) {
      out.printf(
          Locale.ROOT,
          "  %-10s %-8s %5s C  %5s %%   wanted %.0f-%.0f C, %.0f-%.0f %%%n",
          room.name(),
          room.purpose(),
          shown(room.temperatureC()),
          shown(room.relativeHumidity()),
          room.targetLowC(),
          room.targetHighC(),
          room.targetLowRh(),
          room.targetHighRh());
      room.outputs()
          .forEach(
              o -> out.printf("    %-12s %-3s  %s%n", o.kind(), o.on() ? "on" : "off", o.reason()));
    }
    out.println();
    for (NowView.LotView lot : view.lots()) {
      out.printf(
          Locale.ROOT,
          "  %-5s %-28s %-8s in range %6.1f h of %6.1f h   %s%n",
          lot.code(),
          lot.cropName() + " " + lot.variety(),
          lot.place(),
          lot.inRangeHours(),
          lot.inRangeHours() + lot.outOfRangeHours() + lot.unknownHours(),
          lot.sentence());
    }
    out.flush();
  }

  private static String shown(@Nullable Double value) {
    return value == null ? "-" : String.format(Locale.ROOT, "%.1f", value);
  }
}
