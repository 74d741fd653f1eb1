package rindward.controller.command.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.FirstOwner;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.command.base.Progress;
import rindward.controller.daemon.SimulatedRun;
import rindward.controller.page.Page;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.dashboard.rooms.NowView;
import rindward.hardware.shed.Weather;

/** {@code demo}: an invented farm on a simulated shed, without hardware and without set-up. */
@Command(
    name = "demo",
    description =
        "Show an invented farm: a simulated shed with ten weeks behind it, then live. Everything"
            + " is in a temporary folder.",
    footer = {"", "Examples:", "  rindward demo", "  rindward demo --once --json"})
public final class DemoCommand implements Callable<Integer> {
  private static final Logger LOG = LoggerFactory.getLogger(DemoCommand.class);
  private static final long STATUS_MILLIS = 1_000;

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
      description = "Times faster than life; 60 if not given.")
  private int speed = 60;

  @Override
  public Integer call() throws IOException, InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    Path folder = Files.createTempDirectory("rindward-demo");
    Settings settings = settings(folder);
    SimulatedRun rehearsal = rehearsal(settings);
    // Both in one process: the simulated parts are here, and nothing real is at stake.
    Page page = new Page(rehearsal.settings(), rehearsal.daemon().view(), rehearsal.time());
    if (once) {
      NowView view = page.now().now();
      if (json) {
        JsonOutput.print(out, view);
      } else {
        print(out, view);
      }
      page.close();
      rehearsal.daemon().close();
      remove(folder);
      return ExitCode.FINE;
    }
    CountDownLatch stopped = new CountDownLatch(1);
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> {
                  page.close();
                  rehearsal.daemon().close();
                  remove(folder);
                  stopped.countDown();
                },
                "stop"));
    rehearsal.live(speed);
    boolean isOpen = open(page, out);
    print(out, page.now().now());
    if (isOpen) {
      out.printf("%nThe page: http://127.0.0.1:%d/   (Ctrl-C ends the demo)%n", page.port());
    } else {
      out.printf(
          "%nThere is no page, see above; --port takes another one. Ctrl-C ends the demo.%n");
    }
    out.flush();
    boolean isWatched = Progress.isSomebodyThere();
    while (!stopped.await(STATUS_MILLIS, TimeUnit.MILLISECONDS)) {
      if (isWatched) {
        out.print("\r" + line(page.now().now()) + " ");
        out.flush();
      }
    }
    return ExitCode.FINE;
  }

  private static boolean open(Page page, PrintWriter out) {
    try {
      page.open(code -> FirstOwner.announce(out, code));
      return true;
    } catch (IllegalStateException e) {
      LOG.error("{}", e.getMessage());
      return false;
    }
  }

  /** Goes on from the history that is kept, which is made first if there is none. */
  private SimulatedRun rehearsal(Settings settings) throws IOException, InterruptedException {
    DemoCache cache = new DemoCache();
    Instant now = Instant.now();
    Optional<DemoCache.Kept> kept = cache.find(now);
    DemoFarm farm = new DemoFarm(kept.map(DemoCache.Kept::end).orElse(now));
    Weather weather = farm.weather(settings.simulation().seed());
    if (kept.isPresent()) {
      Files.copy(kept.get().file(), settings.store());
    } else {
      SimulatedRun history = new SimulatedRun(settings, weather, farm.start());
      try (Progress progress =
          new Progress(
              "Ten weeks go by",
              DemoFarm.HISTORY.toDays(),
              "days",
              !json && Progress.isSomebodyThere())) {
        farm.live(history, progress::step);
      }
      history.daemon().close();
      try (Database database = new Database(settings.store())) {
        new DemoNotes(farm.start()).measureTheBarn(database);
      }
      keep(cache, settings.store(), farm.end());
    }
    SimulatedRun rehearsal = new SimulatedRun(settings, weather, farm.settlesFrom());
    farm.settle(rehearsal);
    rehearsal.advance(Duration.between(rehearsal.now(), Instant.now()));
    return rehearsal;
  }

  private static void keep(DemoCache cache, Path database, Instant end) {
    try {
      DemoCache.Kept unused = cache.keep(database, end);
    } catch (IOException e) {
      LOG.info("The demo's history was not kept for the next start: {}", e.getMessage());
    }
  }

  /** The whole shed in one line of a terminal. */
  private static String line(NowView view) {
    return view.rooms().stream()
        .map(
            room -> {
              String on =
                  room.outputs().stream()
                      .filter(NowView.OutputView::on)
                      .map(NowView.OutputView::kind)
                      .collect(Collectors.joining(" "));
              return String.format(
                  Locale.ROOT,
                  "%s %s C %s %% %-24s",
                  room.name(),
                  shown(room.temperatureC()),
                  shown(room.relativeHumidity()),
                  on.isEmpty() ? "all off" : on);
            })
        .collect(Collectors.joining(" | "));
  }

  private static void remove(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    } catch (IOException e) {
      LOG.info("The demo's folder {} was left behind: {}", folder, e.getMessage());
    }
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
    for (NowView.EatView lot : view.toEat()) {
      out.printf(
          Locale.ROOT,
          "  %-5s %-28s %-8s %4d   %s: %s%n",
          lot.code(),
          lot.cropName() + " " + lot.variety(),
          lot.place(),
          lot.free(),
          lot.words(),
          lot.reason());
    }
    out.flush();
  }

  private static String shown(@Nullable Double value) {
    return value == null ? "-" : String.format(Locale.ROOT, "%.1f", value);
  }
}
