package rindward.controller.command.shed;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import rindward.controller.daemon.RealBoard;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.Safety;
import rindward.hardware.Relay;
import rindward.hardware.sensor.Pause;
import rindward.hardware.wired.WiredBoard;

/**
 * Tries one output with a person beside it: on for {@link #SECONDS}, off, and the question whether
 * the right thing ran. Where heaters stand behind a heartbeat relay, the heart beats meanwhile; a
 * heater's fan runs before, beside and after it. <b>Hazard:</b> this switches a real heater on;
 * only after a plain yes, and never for longer, but for a network relay that is asked to end by
 * itself.
 */
public final class OutputTrial {
  /** How long an output is on. */
  static final int SECONDS = 5;

  /** The longest that a heartbeat relay may wait for an edge. */
  static final int DROPS_OUT_SECONDS = 30;

  /** The longest that a network relay may stay on when commands stop. */
  static final int AUTO_OFF_SECONDS = 60;

  /** A person needs a moment to see it, and to type. */
  private static final int REACTION_SECONDS = 3;

  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final RealBoard board;
  private final Pause pause;
  private final Predicate<String> asks;
  private final LongSupplier nanos;

  /** What is done with an opened board. */
  @FunctionalInterface
  private interface Work {
    void on(WiredBoard opened) throws IOException;
  }

  /**
   * @param asks puts a question to the person; anything but a plain yes is false
   * @param nanos monotonic, by which the person's answers are timed
   */
  public OutputTrial(RealBoard board, Pause pause, Predicate<String> asks, LongSupplier nanos) {
    this.board = board;
    this.pause = pause;
    this.asks = asks;
    this.nanos = nanos;
  }

  /**
   * Tries one output.
   *
   * @param beside runs from before the output is switched on until after it is off: a heater's fan
   * @return whether the person saw the right thing run and stop
   * @throws IOException in one sentence, when it could not be switched
   */
  public boolean of(OutputSetting output, List<OutputSetting> beside) throws IOException {
    String what =
        output.name() + " in room " + output.room() + " (" + output.driver().place() + ")";
    String running =
        beside.stream()
            .map(other -> ", with " + other.name() + " running")
            .reduce("", String::concat);
    if (!asks.test("Switch on " + what + " for " + SECONDS + " s" + running + "?")) {
      return false;
    }
    List<OutputSetting> all = new ArrayList<>(beside);
    all.add(output);
    with(all, opened -> run(opened, output, beside));
    return asks.test("Did exactly this run, and has it stopped again?");
  }

  /**
   * Tries a heater whose fan somebody has unplugged: its air-flow switch must keep it off.
   *
   * @return whether it stayed off
   * @throws IOException in one sentence, when it could not be switched
   */
  public boolean ofHeaterWithoutAir(OutputSetting heater) throws IOException {
    if (!asks.test(
        "Unplug the fan, or lock its breaker off. Switch on "
            + heater.name()
            + " for "
            + SECONDS
            + " s?")) {
      return false;
    }
    with(List.of(heater), opened -> run(opened, heater, List.of()));
    return asks.test("Did the heater stay off all the time?");
  }

  /**
   * Tries the heartbeat: its relay must hold while the heart beats and let go when it stops.
   *
   * @return the seconds until everything heavy was open; empty unless the person saw both in time
   * @throws IOException in one sentence, when the line could not be switched
   */
  public OptionalInt ofHeartbeat(OutputSetting heartbeat) throws IOException {
    String place = heartbeat.driver().place();
    if (!asks.test("Let the heart beat (" + place + ") for " + SECONDS + " s?")) {
      return OptionalInt.empty();
    }
    with(List.of(), opened -> beat(opened.relay(Safety.HEARTBEAT), SECONDS));
    if (!asks.test("Did the heartbeat relay close?")) {
      return OptionalInt.empty();
    }
    with(List.of(), opened -> beat(opened.relay(Safety.HEARTBEAT), SECONDS));
    return timed(
        "It beat again and has just stopped. Agree at the moment at which everything heavy has"
            + " opened. Is it open again?",
        nanos.getAsLong(),
        DROPS_OUT_SECONDS);
  }

  /**
   * Tries whether a network relay switches itself off once nothing is heard of us: it is told to be
   * on once, and never again.
   *
   * @return the seconds until it was off; empty unless it was in time
   * @throws IOException in one sentence, when it could not be switched
   */
  public OptionalInt ofAutoOff(OutputSetting output, List<OutputSetting> beside)
      throws IOException {
    if (!asks.test(
        "Switch on "
            + output.name()
            + " and say no more, until it is off by itself, "
            + AUTO_OFF_SECONDS
            + " s at most?")) {
      return OptionalInt.empty();
    }
    List<OutputSetting> all = new ArrayList<>(beside);
    all.add(output);
    List<OptionalInt> seen = new ArrayList<>();
    with(
        all,
        opened -> {
          reach(opened);
          for (OutputSetting other : beside) {
            opened.relay(other.name()).set(true);
          }
          if (board.hasHeartbeat()) {
            beat(opened.relay(Safety.HEARTBEAT), 1);
          }
          opened.relay(output.name()).set(true);
          opened.sayAll(PATIENCE);
          seen.add(
              timed(
                  "Agree at the moment at which it goes off. Is it off by itself?",
                  nanos.getAsLong(),
                  AUTO_OFF_SECONDS));
          opened.relay(output.name()).set(false);
        });
    return seen.get(0);
  }

  private OptionalInt timed(String question, long fromNanos, int mostSeconds) {
    if (!asks.test(question)) {
      return OptionalInt.empty();
    }
    long seconds = (nanos.getAsLong() - fromNanos + 500_000_000L) / 1_000_000_000L;
    return seconds <= mostSeconds + REACTION_SECONDS
        ? OptionalInt.of((int) seconds)
        : OptionalInt.empty();
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

  private void reach(WiredBoard opened) throws IOException {
    if (!opened.sayAll(PATIENCE)) {
      throw new IOException(opened.brokerTrouble());
    }
  }

  private void run(WiredBoard opened, OutputSetting output, List<OutputSetting> beside)
      throws IOException {
    reach(opened);
    Relay relay = opened.relay(output.name());
    List<Relay> others = new ArrayList<>();
    for (OutputSetting other : beside) {
      others.add(opened.relay(other.name()));
    }
    if (board.hasHeartbeat()) {
      beat(opened.relay(Safety.HEARTBEAT), 1);
    }
    for (int second = 0; second < SECONDS; second++) {
      for (Relay other : others) {
        other.set(true);
      }
      relay.set(true);
      pause.millis(1_000);
    }
    relay.set(false);
    for (int second = 0; second < SECONDS && !others.isEmpty(); second++) {
      for (Relay other : others) {
        other.set(true);
      }
      pause.millis(1_000);
    }
    for (Relay other : others) {
      other.set(false);
    }
  }

  /** Beats twice a second; the relay then holds for longer than an output is tried. */
  private void beat(Relay line, int seconds) throws IOException {
    for (int half = 0; half < 2 * seconds; half++) {
      line.set(half % 2 == 0);
      pause.millis(500);
    }
  }
}
