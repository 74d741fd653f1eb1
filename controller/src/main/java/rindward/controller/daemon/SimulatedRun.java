package rindward.controller.daemon;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import rindward.controller.control.Tick;
import rindward.controller.settings.Settings;
import rindward.hardware.shed.FruitLoad;
import rindward.hardware.shed.SimulatedShed;
import rindward.hardware.shed.Weather;

/**
 * A daemon on a simulated shed whose time is moved by hand, as fast as it goes, and which can then
 * go on live. The same control code as on the farm.
 */
public final class SimulatedRun {
  /** How much simulated time passes between two flushes. */
  private static final Duration FLUSH = Duration.ofDays(1);

  private final Settings settings;
  private final Time.Stepped stepped;
  private final SimulatedShed shed;
  private final Daemon daemon;
  private volatile Time time;

  /**
   * Opens the shed at a moment; whatever is real in the settings is simulated.
   *
   * @throws IOException when the settings name what a simulated shed does not have
   */
  public SimulatedRun(Settings settings, Weather weather, Instant start) throws IOException {
    this.settings = settings.simulated();
    this.stepped = new Time.Stepped(start);
    this.time = stepped;
    Time handed = () -> time.now();
    this.shed = SimulatedBoard.open(this.settings, weather, handed);
    this.daemon = new Daemon(this.settings, shed, handed, false);
    daemon.stateAccuracies();
  }

  /** Returns the daemon. */
  public Daemon daemon() {
    return daemon;
  }

  /** Returns the simulated shed, to break things in it. */
  public SimulatedShed shed() {
    return shed;
  }

  /** Carries a lot's fruit into a room, as cold as it is outdoors. */
  public void load(String room, String lot, double massKg) {
    shed.load(room, FruitLoad.winterSquash(lot, massKg, shed.outdoor().temperatureC()));
  }

  /** Carries a lot's fruit from one room to another. */
  public void move(String lot, String from, String to) {
    shed.move(lot, from, to);
  }

  /** Returns the simulated moment. */
  public Instant now() {
    return time.now().at();
  }

  /** Lets what was said since take effect on the rooms, as a running daemon does by itself. */
  public void heed() {
    daemon.hear();
  }

  /**
   * Lives through a stretch of time of which the store knows already, so that the simulated rooms
   * become what it tells of them. Nothing is noted.
   */
  public void settle(Duration stretch) throws InterruptedException {
    daemon.hush(true);
    heed();
    advance(stretch);
    daemon.hush(false);
  }

  /** Lives through a stretch of time, tick by tick; what was said before it takes effect first. */
  public void advance(Duration stretch) throws InterruptedException {
    heed();
    long ticks = stretch.dividedBy(settings.tick());
    long flushEvery = FLUSH.dividedBy(settings.tick());
    for (long i = 1; i <= ticks; i++) {
      stepped.advance(settings.tick());
      daemon.step();
      if (i % flushEvery == 0 || i == ticks) {
        daemon.hear();
        daemon.flush();
      }
    }
  }

  /** Returns the time of the shed, moved by hand or going on live. */
  public Time time() {
    return () -> time.now();
  }

  /** Returns the settings by which it runs, with nothing real in them. */
  public Settings settings() {
    return settings;
  }

  /**
   * Goes on live.
   *
   * @param factor how many times faster than life
   */
  public Daemon live(int factor) {
    Tick now = stepped.now();
    time = Time.faster(now, factor);
    daemon.start(factor);
    return daemon;
  }
}
