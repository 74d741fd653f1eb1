package rindward.controller.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.hardware.shed.GeneratedWeather;

/**
 * The daemon in real time on a hundred rooms with four probes and two outputs each, looked at every
 * second. The simulated shed's own arithmetic is counted with it.
 */
final class HundredRooms {
  private static final int ROOMS = 100;
  private static final int PROBES = 4;
  private static final int LOOK_MILLIS = 200;

  private HundredRooms() {}

  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectory(Path.of(args[0]).resolve("rooms"));
    Path file = Files.writeString(folder.resolve("shed.toml"), settings());
    Problems problems = new Problems();
    Settings settings =
        SettingsReader.read(file, problems)
            .orElseThrow(() -> new IllegalStateException(problems.list().toString()));
    Time time = Time.system();
    Daemon daemon =
        new Daemon(
            settings,
            SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time),
            time,
            true);
    OperatingSystemMXBean system =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    daemon.start(1);
    long begin = System.nanoTime();
    long cpuBegin = system.getProcessCpuTime();
    long end = begin + TimeUnit.SECONDS.toNanos(Math.round(60 * Double.parseDouble(args[1])));
    LongStream.Builder took = LongStream.builder();
    long seen = 0;
    long overruns = 0;
    while (System.nanoTime() < end) {
      TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
      ShedSnapshot latest = daemon.latest();
      if (latest != null && latest.tick() > seen) {
        seen = latest.tick();
        overruns = latest.overruns();
        took.add(latest.took().toNanos());
      }
    }
    double seconds = (System.nanoTime() - begin) / 1e9;
    double cpu = (system.getProcessCpuTime() - cpuBegin) / 1e9;
    daemon.close();
    long[] sorted = took.build().sorted().toArray();
    System.out.printf(
        Locale.ROOT,
        "| length | %.0f s |%n| ticks, and skipped | %d, %d |%n| tick, median | %.1f ms |%n"
            + "| tick, 99th percentile | %.1f ms |%n| CPU, of one core | %.0f %% |%n",
        seconds,
        seen,
        overruns,
        sorted[sorted.length / 2] / 1e6,
        sorted[(int) (sorted.length * 0.99)] / 1e6,
        100 * cpu / seconds);
  }

  private static String settings() {
    StringBuilder text =
        new StringBuilder(
            """
            [site]
            name = "Hollin Bank Farm"
            time_zone = "UTC"
            [control]
            tick = "1s"
            [store]
            file = "rindward.db"
            [dashboard]
            port = 0
            """);
    for (int room = 0; room < ROOMS; room++) {
      text.append(
          String.format(
              """
              [rooms.r%1$d]
              purpose = "storage"
              temperature = [10, 13]
              humidity = [50, 70]
              [outputs.heater%1$d]
              room = "r%1$d"
              kind = "heater"
              driver = "simulated"
              power_w = 750
              minimum_on = "30s"
              minimum_off = "30s"
              [outputs.fan%1$d]
              room = "r%1$d"
              kind = "circulation"
              driver = "simulated"
              power_w = 25
              minimum_on = "1m"
              minimum_off = "1m"
              """,
              room));
      for (int probe = 0; probe < PROBES; probe++) {
        text.append(
            String.format(
                """
                [probes.p%1$d-%2$d]
                room = "r%1$d"
                driver = "simulated"
                accuracy = { temperature = 0.2, humidity = 2 }
                """,
                room, probe));
      }
    }
    return text.toString();
  }
}
