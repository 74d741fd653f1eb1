package rindward.dashboard.live;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectWriter;
import io.javalin.http.Context;
import io.javalin.http.ServiceUnavailableResponse;
import jakarta.servlet.AsyncContext;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Sends the latest state to every open page as server-sent events.
 *
 * <p>Each message is the whole state, so a page that missed some needs only the last one; one that
 * comes back and has it already, by the id it gives, gets nothing until there is news. The state is
 * asked for and serialised once, on the hub's single worker thread and only while somebody is
 * watching, at most a few times between two heartbeats, and handed to each client without blocking;
 * no client holds a thread, and a client that cannot keep up skips to the latest.
 *
 * <p>What a turn throws, an {@link Error} too, costs that turn: pages keep the state they have, and
 * the next one comes. Whoever supervises the hub keeps count.
 *
 * <p>{@link #publish}, {@link #connect} and {@link #close} may be called from any thread.
 */
public final class LiveHub implements AutoCloseable {

  /** Open pages served at once; one more is told to come back later. */
  public static final int MAX_CLIENTS = 64;

  /** A demo ticks faster than anybody reads, and a phone pays for what it is sent. */
  private static final int MOST_MESSAGES_A_HEARTBEAT = 7;

  private static final byte[] HEARTBEAT = ":\n\n".getBytes(StandardCharsets.UTF_8);

  private final ObjectWriter json;
  private final LivePlaces places = new LivePlaces(MAX_CLIENTS);
  private final AtomicReference<@Nullable Supplier<?>> waiting = new AtomicReference<>();
  private final String run = UUID.randomUUID().toString().substring(0, 8);
  private final ScheduledThreadPoolExecutor worker;
  private final ScheduledFuture<?> heartbeat;
  private final Executor supervisor;
  private final long pauseMillis;

  // Confined to the worker thread.
  private @Nullable Supplier<?> state;
  private byte @Nullable [] latest;
  private String latestId = "";
  private long messages;
  private boolean isPausing;

  /**
   * @param json how a state is written
   * @param heartbeat the pause between comments that keep idle connections open and find dead ones
   * @param supervisor does each turn in place, and keeps what it throws
   */
  public LiveHub(ObjectWriter json, Duration heartbeat, Executor supervisor) {
    this.json = json;
    this.supervisor = supervisor;
    pauseMillis = heartbeat.toMillis() / MOST_MESSAGES_A_HEARTBEAT;
    worker = new ScheduledThreadPoolExecutor(1, LiveHub::newWorkerThread);
    worker.setRejectedExecutionHandler(new ThreadPoolExecutor.DiscardPolicy());
    this.heartbeat =
        worker.scheduleAtFixedRate(
            () -> turn(this::beat),
            heartbeat.toMillis(),
            heartbeat.toMillis(),
            TimeUnit.MILLISECONDS);
  }

  /**
   * Says that there is a new state to show, and returns at once. Of states published faster than
   * they can be sent, only the last is sent.
   *
   * @param newest gives the state; called on the hub's thread
   */
  public void publish(Supplier<?> newest) {
    if (waiting.getAndSet(newest) == null) {
      worker.execute(() -> turn(this::deliver));
    }
  }

  /**
   * Turns the request into a stream that stays open until either side closes it. The client gets
   * the latest state first, if there is one.
   *
   * @param isSignedIn whether somebody asks who has signed in; they come first
   * @throws ServiceUnavailableResponse when too many streams are open
   */
  public void connect(Context ctx, boolean isSignedIn) throws IOException {
    LiveClient client = new LiveClient(ctx.res().getOutputStream());
    if (!places.take(client, ctx.ip(), isSignedIn)) {
      ctx.header("Retry-After", "15");
      throw new ServiceUnavailableResponse("Too many pages are open; try again later.");
    }
    ctx.contentType("text/event-stream; charset=utf-8");
    ctx.header("Cache-Control", "no-store");
    ctx.header("X-Accel-Buffering", "no");
    AsyncContext async = ctx.req().startAsync();
    async.setTimeout(0); // The heartbeat finds dead clients; a quiet shed is not a time-out.
    ctx.future(() -> client.ended().whenComplete((done, failure) -> places.free(client)));
    client.start();
    String lastId = ctx.header("Last-Event-ID");
    worker.execute(() -> turn(() -> greet(client, lastId)));
  }

  /** Returns how many streams are open. */
  public int clients() {
    return places.clients().size();
  }

  /** Ends every stream. States published afterwards are ignored. */
  @Override
  public void close() {
    heartbeat.cancel(false);
    worker.shutdownNow();
    places.clients().forEach(LiveClient::end);
  }

  private void greet(LiveClient client, @Nullable String lastId) {
    if (latest == null && state != null) {
      latest = written(state);
    }
    if (latest != null && !latestId.equals(lastId)) {
      client.offer(latest);
    }
  }

  private void deliver() {
    if (isPausing) {
      return; // What waits is sent when the pause is over.
    }
    Supplier<?> newest = waiting.getAndSet(null);
    if (newest == null) {
      return;
    }
    state = newest;
    if (places.clients().isEmpty()) {
      latest = null;
      return;
    }
    byte[] frame = written(newest);
    latest = frame;
    places.clients().forEach(client -> client.offer(frame));
    isPausing = true;
    var unused = worker.schedule(() -> turn(this::afterPause), pauseMillis, TimeUnit.MILLISECONDS);
  }

  private void afterPause() {
    isPausing = false;
    deliver();
  }

  private void turn(Runnable work) {
    supervisor.execute(work);
  }

  private byte[] written(Supplier<?> newest) {
    try {
      return frame(json.writeValueAsString(newest.get()));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private byte[] frame(String oneLineOfJson) {
    messages++;
    latestId = run + "-" + messages;
    return ("retry: 3000\nid: " + latestId + "\ndata: " + oneLineOfJson + "\n\n")
        .getBytes(StandardCharsets.UTF_8);
  }

  private void beat() {
    places.clients().forEach(client -> client.offerIfIdle(HEARTBEAT));
  }

  private static Thread newWorkerThread(Runnable work) {
    Thread thread = new Thread(work, "live-hub");
    thread.setDaemon(true);
    return thread;
  }
}
