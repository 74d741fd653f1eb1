package rindward.hardware.mqtt;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.jspecify.annotations.Nullable;
import rindward.hardware.MonotonicClock;

/**
 * The one connection to the broker, supervised from outside. Whoever has something to say leaves it
 * here, and the latest word on each topic wins; whoever listens looks up the latest that came in.
 * Neither waits. While the broker is away only the latest words are kept, and when it is back they
 * go out: a state, not a backlog.
 *
 * <p>Thread-safe, but for {@link #supervise()}, which belongs to one thread and may block it for
 * some seconds.
 */
public final class Broker implements AutoCloseable {
  private static final long FIRST_WAIT_NANOS = 1_000_000_000L;
  private static final long LONGEST_WAIT_NANOS = 60_000_000_000L;
  private static final int LONGEST_PAYLOAD = 16_384;
  private static final int MOST_TOPICS = 1_000;
  private static final int MOST_WAITING = 50;

  private final BrokerSettings settings;
  private final MonotonicClock clock;
  private final Set<String> topics = new TreeSet<>();
  private final Map<String, Incoming> inbox = new ConcurrentHashMap<>();
  private final Set<String> kept = ConcurrentHashMap.newKeySet();
  private final Map<String, Outgoing> states = new HashMap<>();
  private final Map<String, Outgoing> outbox = new LinkedHashMap<>();
  private final Map<String, Queue<Incoming>> waiting = new ConcurrentHashMap<>();
  private final Echo echo = new Echo();
  private volatile @Nullable Connection connection;
  private volatile boolean isClosed;
  private long waitNanos = FIRST_WAIT_NANOS;
  private long nextTryNanos;
  private volatile String trouble = "The broker has not been asked yet.";

  /** Prepares a connection; {@link #supervise()} opens it. */
  public Broker(BrokerSettings settings, MonotonicClock clock) {
    this.settings = settings;
    this.clock = clock;
    nextTryNanos = clock.nanos();
  }

  /** Listens to a topic from the next connection on. Call it before supervising begins. */
  void listen(String topic) {
    Topics.check(topic);
    topics.add(topic);
  }

  /** Returns the latest that came in on a topic; null before anything did. */
  @Nullable Incoming latest(String topic) {
    return inbox.get(topic);
  }

  /**
   * Tells whether the broker kept a message on a topic when we last connected, and nobody has
   * deleted it since.
   */
  boolean isKept(String topic) {
    return kept.contains(topic);
  }

  /**
   * Publishes a state: kept by the broker, and published again after every reconnection.
   *
   * @throws IllegalArgumentException for a topic that no message can have
   */
  public void state(String topic, String text) {
    leave(topic, new Outgoing(text, true, Long.MAX_VALUE));
  }

  /** Sends a command: never kept by the broker, and dropped when it could not go out in time. */
  public void command(String topic, String text, long validNanos) {
    leave(topic, new Outgoing(text, false, clock.nanos() + validNanos));
  }

  /**
   * Listens to a topic of which every message matters, from the next connection on: they wait in
   * their order for {@link #next}, and when too many wait new ones are dropped. Call it before
   * supervising begins.
   */
  public void listenToEach(String topic) {
    listen(topic);
    waiting.put(topic, new ArrayBlockingQueue<>(MOST_WAITING));
  }

  /** Takes the oldest message that waits on a topic; null when none does. */
  public @Nullable Incoming next(String topic) {
    Queue<Incoming> queue = waiting.get(topic);
    return queue == null ? null : queue.poll();
  }

  /** Returns a topic of our own, below the settings' root. */
  public String topic(String below) {
    return settings.root() + "/" + below;
  }

  /** Returns what is wrong with the connection, in one sentence; empty when all is well. */
  public String trouble() {
    return trouble;
  }

  /** Returns how many words wait to go out; never more than there are topics. */
  public int waiting() {
    synchronized (outbox) {
      return outbox.size();
    }
  }

  /**
   * Looks after the connection: opens it, sends what waits, and tears it down when our own echo
   * does not return. Call it about once a second, always from the same thread.
   */
  public void supervise() {
    long now = clock.nanos();
    Connection current = connection;
    try {
      if (current != null && (!current.isOpen() || echo.isMissing(now))) {
        tearDown(
            current.isOpen()
                ? "The broker at " + settings.uri() + " lets no messages through."
                : "The connection to the broker at " + settings.uri() + " was lost.");
        current = null;
      }
      if (current == null && !isClosed && now - nextTryNanos >= 0) {
        current = open();
      }
      if (current != null) {
        if (echo.isDue(now)) {
          current.publish(settings.echoTopic(), echo.next(now), false);
        }
        sendWaiting(current, now);
      }
    } catch (MqttException e) {
      tearDown(MqttTrouble.sentence(settings, e));
    }
  }

  /** Says goodbye if it can be said at once, and lets go. Safe to call twice. */
  @Override
  public void close() {
    isClosed = true;
    Connection open = connection;
    connection = null;
    if (open != null) {
      open.sayGoodbye(settings.stateTopic());
    }
  }

  private Connection open() throws MqttException {
    Connection fresh = new Connection(settings, this::arrived);
    connection = fresh;
    kept.clear();
    fresh.open(topics);
    echo.begin(clock.nanos());
    waitNanos = FIRST_WAIT_NANOS;
    trouble = "";
    synchronized (outbox) {
      states.forEach(outbox::put);
      outbox.put(settings.stateTopic(), new Outgoing("online", true, Long.MAX_VALUE));
    }
    return fresh;
  }

  private void tearDown(String sentence) {
    trouble = sentence;
    Connection dead = connection;
    connection = null;
    if (dead != null) {
      dead.abandon();
    }
    nextTryNanos = clock.nanos() + waitNanos;
    waitNanos = Math.min(2 * waitNanos, LONGEST_WAIT_NANOS);
  }

  private void sendWaiting(Connection open, long now) throws MqttException {
    List<Map.Entry<String, Outgoing>> ready;
    synchronized (outbox) {
      ready = outbox.entrySet().stream().map(Map.Entry::copyOf).toList();
    }
    for (Map.Entry<String, Outgoing> entry : ready) {
      Outgoing word = entry.getValue();
      if (now - word.untilNanos() < 0 || word.untilNanos() == Long.MAX_VALUE) {
        if (!open.hasRoom()) {
          return;
        }
        open.publish(entry.getKey(), word.text(), word.isRetained());
      }
      synchronized (outbox) {
        outbox.remove(entry.getKey(), word);
      }
    }
  }

  private void leave(String topic, Outgoing word) {
    Topics.check(topic);
    synchronized (outbox) {
      if (!outbox.containsKey(topic) && Math.max(outbox.size(), states.size()) >= MOST_TOPICS) {
        throw new IllegalStateException("more than " + MOST_TOPICS + " topics: " + topic);
      }
      outbox.put(topic, word);
      if (word.isRetained()) {
        states.put(topic, word);
      }
    }
  }

  /** Called by a thread of Paho's, which must never be held up. */
  private void arrived(String topic, byte[] payload, boolean isRetained) {
    if (payload.length > LONGEST_PAYLOAD) {
      return;
    }
    String text = new String(payload, StandardCharsets.UTF_8);
    if (topic.equals(settings.echoTopic())) {
      echo.back(text, clock.nanos());
    } else if (topics.contains(topic)) {
      if (text.isEmpty()) {
        kept.remove(topic);
      } else if (isRetained) {
        kept.add(topic);
      }
      Incoming message = new Incoming(text, isRetained, clock.nanos());
      inbox.put(topic, message);
      Queue<Incoming> queue = waiting.get(topic);
      if (queue != null && !text.isEmpty()) {
        // A full queue drops the newest: whoever floods it is told nothing.
        boolean unused = queue.offer(message);
      }
    }
  }
}
