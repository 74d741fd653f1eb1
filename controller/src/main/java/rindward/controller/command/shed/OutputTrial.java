package rindward.controller.command.shed;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.function.Predicate;
import rindward.controller.daemon.RealBoard;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.Safety;
import rindward.hardware.Relay;
import rindward.hardware.sensor.Pause;
import rindward.hardware.wired.WiredBoard;

/**
 * Tries one output with a person beside it: on for {@link #SECONDS}, off, and the question whether
 * the right thing ran. Where heaters stand behind a heartbeat relay, the heart beats meanwhile.
 * <b>Hazard:</b> this switches a real heater on; only after a plain yes, and never for longer.
 */
public final class OutputTrial {
  /** How long an output is on. */
  static final int SECONDS = 5;

  /** The longest that a heartbeat relay may wait for an edge. */
  static final int DROPS_OUT_SECONDS = 30;

  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final RealBoard board;
  private final Pause pause;
  private final Predicate<String> asks;

  /** What is done with an opened board. */
  @FunctionalInterface
  private interface Work {
    void on(WiredBoard opened) throws IOException;
  }

  /**
   * @param asks puts a question to the person; anything but a plain yes is false
   */
  public OutputTrial(RealBoard board, Pause pause, Predicate<String> asks) {
    this.board = board;
    this.pause = pause;
    this.asks = asks;
  }

  /**
   * Tries one output.
   *
   * @return whether the person saw the right thing run and stop
   * @throws IOException in one sentence, when it could not be switched
   */
  public boolean of(OutputSetting output) throws IOException {
    String what =
        output.name() + " in room " + output.room() + " (" + output.driver().place() + ")";
    if (!asks.test("Switch on " + what + " for " + SECONDS + " s?")) {
      return false;
    }
    with(List.of(output), opened -> run(opened, output));
    return asks.test("Did exactly this run, and has it stopped again?");
  }

  /**
   * Tries the heartbeat: its relay must hold while the heart beats and let go when it stops.
   *
   * @return whether the person saw both
   * @throws IOException in one sentence, when the line could not be switched
   */
  public boolean ofHeartbeat(OutputSetting heartbeat) throws IOException {
    String place = heartbeat.driver().place();
    if (!asks.test("Let the heart beat (" + place + ") for " + SECONDS + " s?")) {
      return false;
    }
    with(List.of(), opened -> beat(opened.relay(Safety.HEARTBEAT), SECONDS));
    if (!asks.test("Did the heartbeat relay close?")) {
      return false;
    }
    for (int second = 0; second < DROPS_OUT_SECONDS; second++) {
      pause.millis(1_000);
    }
    return asks.test(DROPS_OUT_SECONDS + " s without a beat are over. Is it open again?");
  }

  private void with(List<OutputSetting> outputs, Work work) throws IOException {
    try (WiredBoard opened = board.openForTrial(outputs)) {
      Thread offAtStop = new Thread(opened::close, "off");
      Runtime.getRuntime().addShutdownHook(offAtStop);
      try {
        work.on(opened);
      } finally {
        opened.close();
        Runtime.getRuntime().removeShutdownHook(offAtStop);
      }
    }
  }

  private void run(WiredBoard opened, OutputSetting output) throws IOException {
    if (!opened.sayAll(PATIENCE)) {
      throw new IOException(opened.brokerTrouble());
    }
    Relay relay = opened.relay(output.name());
    if (board.hasHeartbeat()) {
      beat(opened.relay(Safety.HEARTBEAT), 1);
    }
    for (int second = 0; second < SECONDS; second++) {
      relay.set(true);
      pause.millis(1_000);
    }
    relay.set(false);
  }

  /** Beats twice a second; the relay then holds for longer than an output is tried. */
  private void beat(Relay line, int seconds) throws IOException {
    for (int half = 0; half < 2 * seconds; half++) {
      line.set(half % 2 == 0);
      pause.millis(500);
    }
  }
}
