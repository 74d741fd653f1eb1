package rindward.controller.store;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Weighed;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.samples.SampleLog;
import rindward.hardware.shed.GeneratedWeather;

/**
 * The other process: the daemon on simulated time, as fast as it goes, until somebody ends it. It
 * acknowledges by a line each tick ({@code tick SECOND}), each flush ({@code flushed SECOND}) and
 * each entry that was kept ({@code said REQUEST}).
 */
final class ShedUnderLoad {
  private static final String LOT = "KB1";
  private static final int FRUITS = 40;

  private ShedUnderLoad() {}

  public static void main(String[] args) throws Exception {
    Settings settings = SettingsReader.read(Path.of(args[0]), new Problems()).orElseThrow();
    Instant start = Instant.ofEpochSecond(Long.parseLong(args[1]));
    Time.Stepped time = new Time.Stepped(start);
    Daemon daemon =
        new Daemon(
            settings,
            SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time),
            time,
            false);
    say(daemon, new Harvested(LOT, "kabocha", "", FRUITS, "curing", start), "harvest", start);
    Instant flushed = start;
    while (true) {
      time.advance(settings.tick());
      daemon.step();
      Instant now = time.now().at();
      print("tick " + now.getEpochSecond());
      if (Duration.between(flushed, now).compareTo(SampleLog.FLUSH_INTERVAL) >= 0) {
        daemon.hear();
        daemon.flush();
        flushed = now;
        print("flushed " + now.getEpochSecond());
        say(
            daemon,
            new Weighed(LOT, null, FRUITS, 60_000, 0, now),
            "weighed-" + now.getEpochSecond(),
            now);
      }
    }
  }

  private static void say(Daemon daemon, Entry entry, String request, Instant now) {
    daemon
        .door()
        .say(entry, "Wren", request, OptionalLong.empty(), now)
        .refusal()
        .ifPresentOrElse(
            why -> {
              // Said again after a restart, the harvest is known already.
              if (!request.equals("harvest")) {
                throw new IllegalStateException(why);
              }
            },
            () -> print("said " + request));
  }

  /** In one piece, so that whoever reads never sees half a line. */
  private static void print(String line) {
    System.out.print(line + "\n");
    System.out.flush();
  }
}
