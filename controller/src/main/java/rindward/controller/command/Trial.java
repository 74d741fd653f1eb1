package rindward.controller.command;

import java.io.IOException;
import java.time.Duration;
import java.util.function.Predicate;
import rindward.controller.daemon.RealBoard;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.hardware.Relay;
import rindward.hardware.sensor.Pause;
import rindward.hardware.wired.WiredBoard;

/**
 * Tries one output with a person beside it: on for {@link #SECONDS}, off, and the question whether
 * the right thing ran. <b>Hazard:</b> this switches a real heater on; only after a plain yes, and
 * never for longer.
 */
final class Trial {
  /** How long an output is on. */
  static final int SECONDS = 5;

  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final RealBoard board;
  private final Pause pause;
  private final Predicate<String> asks;

  /**
   * @param asks puts a question to the person; anything but a plain yes is false
   */
  Trial(RealBoard board, Pause pause, Predicate<String> asks) {
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
  boolean of(OutputSetting output) throws IOException {
    String what =
        output.name() + " in room " + output.room() + " (" + output.driver().place() + ")";
    if (!asks.test("Switch on " + what + " for " + SECONDS + " s?")) {
      return false;
    }
    try (WiredBoard opened = board.openOutput(output)) {
      Thread offAtStop = new Thread(opened::close, "off");
      Runtime.getRuntime().addShutdownHook(offAtStop);
      try {
        run(opened, output);
      } finally {
        opened.close();
        Runtime.getRuntime().removeShutdownHook(offAtStop);
      }
    }
    return asks.test("Did exactly this run, and has it stopped again?");
  }

  private void run(WiredBoard opened, OutputSetting output) throws IOException {
    if (!opened.sayAll(PATIENCE)) {
      throw new IOException(opened.brokerTrouble());
    }
    Relay relay = opened.relay(output.name());
    for (int second = 0; second < SECONDS; second++) {
      relay.set(true);
      pause.millis(1_000);
    }
    relay.set(false);
  }
}
