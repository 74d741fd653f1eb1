package rindward.dashboard;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.dashboard.rooms.NowView;

/**
 * Shows the pages with an invented shed, for whoever changes them. Run it from an editor; the first
 * argument is the port, the second one of {@code well}, {@code damp}, {@code unread}, {@code
 * stopped} (a shed that measures nothing new) or {@code failing}.
 */
final class Preview {

  private static final Logger LOG = LoggerFactory.getLogger(Preview.class);
  private static final Duration TICK = Duration.ofSeconds(5);

  private Preview() {}

  public static void main(String[] args) throws Exception {
    int port = args.length > 0 ? Integer.parseInt(args[0]) : DashboardSettings.DEFAULT_PORT;
    String kind = args.length > 1 ? args[1] : "well";
    InventedShed shed = new InventedShed(view(kind, 0));
    if (kind.equals("failing")) {
      shed.fail(new IllegalStateException("as asked for"));
    }
    Dashboard dashboard =
        new Dashboard(
            DashboardSettings.onThisMachine(port), shed.desks(), () -> "", InstantSource.system());
    dashboard.start();
    dashboard.announceCode(code -> LOG.info("the owner's one-time code: {}", code));
    ScheduledExecutorService ticks = Executors.newSingleThreadScheduledExecutor();
    int[] tick = {0};
    if (!List.of("stopped", "failing").contains(kind)) {
      var unused =
          ticks.scheduleAtFixedRate(
              () -> dashboard.live().publish(() -> shed.show(view(kind, tick[0]++))),
              0,
              TICK.toSeconds(),
              TimeUnit.SECONDS);
    }
    new CountDownLatch(1).await();
  }

  private static NowView view(String kind, int tick) {
    Instant now = Instant.now();
    return switch (kind) {
      case "damp" -> InventedShed.damp(now);
      case "unread" -> InventedShed.unread(now);
      case "stopped" -> InventedShed.well(now.minus(Duration.ofMinutes(7)), 27.4);
      default -> InventedShed.well(now, 27.4 + Math.sin(tick / 4.0));
    };
  }
}
