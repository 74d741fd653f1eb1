package rindward.hardware.wired;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.hardware.Board;
import rindward.hardware.Probe;
import rindward.hardware.Relay;
import rindward.hardware.mqtt.Broker;
import rindward.hardware.mqtt.BrokerSettings;

/**
 * The real board: opens exactly what it is told of, the outputs first and off. An output that
 * cannot be opened is a reason not to start, because nobody would know what it does; a probe that
 * cannot be opened costs itself and says why at every reading. The connection to the broker has a
 * thread of its own. Opened and closed by one thread, after everybody else has let go of its
 * relays.
 */
public final class WiredBoard implements Board {
  private static final Logger LOG = LoggerFactory.getLogger(WiredBoard.class);

  /** How long a last word to the broker may take. */
  private static final long PATIENCE_SECONDS = 2;

  private static final int PAUSE_MILLIS = 50;

  private final Machine machine;
  private final @Nullable Broker broker;
  private final ScheduledExecutorService worker =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "broker");
            thread.setDaemon(true);
            return thread;
          });
  private final Map<String, Relay> relays = new LinkedHashMap<>();
  private final Map<String, Probe> probes = new LinkedHashMap<>();
  private volatile Executor supervisor = Runnable::run;
  private boolean isClosed;

  /** One output and what it hangs on. */
  public record Output(String name, RelayDriver driver) {}

  /** One probe, what it hangs on, and what is added to its values. */
  public record Input(String name, ProbeDriver driver, Offset offset) {}

  private WiredBoard(Machine machine, @Nullable Broker broker) {
    this.machine = machine;
    this.broker = broker;
  }

  /**
   * Opens a board, which takes the machine over and closes it.
   *
   * @param broker how to reach the broker; null where no part speaks MQTT
   * @throws IOException in one sentence, when an output cannot be opened; all others are then off
   */
  public static WiredBoard open(
      Machine machine, @Nullable BrokerSettings broker, List<Output> outputs, List<Input> inputs)
      throws IOException {
    WiredBoard board =
        new WiredBoard(machine, broker == null ? null : new Broker(broker, machine.clock()));
    try {
      board.openAll(outputs, inputs);
    } catch (IOException | RuntimeException e) {
      board.close();
      throw e;
    }
    return board;
  }

  private void openAll(List<Output> outputs, List<Input> inputs) throws IOException {
    Parts parts = new Parts(machine, broker);
    for (Output output : outputs) {
      Relay relay = output.driver.openOff(output.name, parts);
      relay.set(false);
      relays.put(output.name, relay);
    }
    for (Input input : inputs) {
      probes.put(input.name, open(input, parts));
    }
    if (broker != null) {
      var unused = worker.scheduleWithFixedDelay(this::supervise, 0, 1, TimeUnit.SECONDS);
    }
  }

  private static Probe open(Input input, Parts parts) {
    try {
      return input.offset.on(input.driver.open(input.name, parts));
    } catch (IOException e) {
      return new UnopenedProbe(input.name, e);
    }
  }

  @Override
  public Probe probe(String name) throws IOException {
    return named("probe", name, probes);
  }

  @Override
  public Relay relay(String name) throws IOException {
    return named("output", name, relays);
  }

  /** Returns what is wrong with the connection to the broker; empty when all is well or none is. */
  public String brokerTrouble() {
    return broker == null ? "" : broker.trouble();
  }

  /**
   * Waits until every word left for the broker has gone out.
   *
   * @return whether all have, within {@code patience}
   */
  public boolean sayAll(Duration patience) throws InterruptedIOException {
    long end = machine.clock().nanos() + patience.toNanos();
    while (broker != null && !(broker.trouble().isEmpty() && broker.waiting() == 0)) {
      if (machine.clock().nanos() - end >= 0) {
        return false;
      }
      machine.pause().millis(PAUSE_MILLIS);
    }
    return true;
  }

  @Override
  public synchronized void close() {
    if (isClosed) {
      return;
    }
    isClosed = true;
    relays.values().forEach(WiredBoard::off);
    try {
      machine.close();
    } catch (IOException e) {
      LOG.error("It is not certain that every output is off: {}", e.getMessage());
    }
    if (broker != null) {
      sendLastWords(broker);
    }
    worker.shutdownNow();
  }

  /** The broker's own thread sends them, if it is not held up; nothing else may call it. */
  private void sendLastWords(Broker broker) {
    worker.execute(this::supervise);
    worker.shutdown();
    try {
      if (!worker.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        LOG.warn("The broker could not be told that everything is off: {}", broker.trouble());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    broker.close();
  }

  @Override
  public void superviseBy(Executor next) {
    supervisor = next;
  }

  private void supervise() {
    Broker minded = broker;
    if (minded == null) {
      return;
    }
    try {
      supervisor.execute(minded::supervise);
    } catch (RuntimeException | Error e) { // The next turn must come.
      LOG.error("The connection to the broker failed in an unforeseen way", e);
    }
  }

  private static void off(Relay relay) {
    try {
      relay.set(false);
    } catch (IOException | RuntimeException e) {
      LOG.error("Output {} may still be on: {}", relay.name(), e.getMessage());
    }
  }

  private static <T> T named(String what, String name, Map<String, T> all) throws IOException {
    T found = all.get(name);
    if (found == null) {
      throw new IOException(
          what + " was '" + name + "' but it must be one of " + String.join(", ", all.keySet()));
    }
    return found;
  }
}
