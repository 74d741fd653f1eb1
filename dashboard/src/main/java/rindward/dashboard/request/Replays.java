package rindward.dashboard.request;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A phone that loses the network in the shed does not know whether its change arrived, and sends it
 * again under the same {@code Idempotency-Key}. The second time it gets the first answer, and
 * nothing is done; another change under the key of the first is refused. Answers are held in
 * memory, for a day and up to a bounded number; what must be told apart for longer hands the key on
 * to the controller. For any thread.
 */
public final class Replays {
  public static final String HEADER = "Idempotency-Key";

  private static final Pattern KEY = Pattern.compile("[A-Za-z0-9_-]{8,80}");
  private static final Duration MEMORY = Duration.ofDays(1);
  private static final int MOST_ANSWERS = 500;
  private static final String MINE = "replay";
  private static final String CONTENT = "replayed content";
  private static final Set<HandlerType> HARMLESS =
      Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS);

  private final InstantSource clock;
  private final Function<Context, String> who;
  private final Map<String, Answer> answers = new LinkedHashMap<>();

  /**
   * @param who names the caller of a request; one caller's keys are not another's
   */
  public Replays(InstantSource clock, Function<Context, String> who) {
    this.clock = clock;
    this.who = who;
  }

  /** The first answer; without a body while its request is still being dealt with. */
  private record Answer(
      Instant at, String content, int status, byte @Nullable [] body, String mediaType) {}

  /** Stands before and after everything added to {@code routes}. */
  public void add(RoutesConfig routes) {
    routes.beforeMatched("/api/*", this::before);
    routes.after("/api/*", this::after);
  }

  /**
   * Returns the key of a request that must have one.
   *
   * @throws BadRequestResponse when it has none
   */
  public static String key(Context ctx) {
    String key = ctx.header(HEADER);
    if (key == null || !KEY.matcher(key).matches()) {
      throw new BadRequestResponse(
          HEADER + " was '" + shown(key) + "' but it must be 8 to 80 letters, figures, - or _.");
    }
    return key;
  }

  private void before(Context ctx) {
    if (HARMLESS.contains(ctx.method()) || ctx.header(HEADER) == null) {
      return;
    }
    String caller = who.apply(ctx);
    if (caller.isEmpty()) {
      return; // Signing in gives a cookie, which a second answer could not give again.
    }
    String name = caller + " " + ctx.method() + " " + ctx.path() + " " + key(ctx);
    String content = JsonBody.contentOf(ctx);
    Answer first = begin(name, content);
    if (first == null) {
      ctx.attribute(MINE, name);
      ctx.attribute(CONTENT, content);
      return;
    }
    if (!first.content().equals(content)) {
      throw new HttpResponseException(
          409,
          HEADER + " was used for another change already; each change needs its own.",
          Map.of());
    }
    if (first.body() == null) {
      throw new HttpResponseException(
          409, "This change is being made at this moment.", Map.of("Retry-After", "1"));
    }
    ctx.status(first.status()).contentType(first.mediaType()).result(first.body());
    ctx.header("Idempotent-Replayed", "true");
    ctx.skipRemainingHandlers();
  }

  private void after(Context ctx) throws IOException {
    String name = ctx.attribute(MINE);
    if (name == null) {
      return;
    }
    if (ctx.statusCode() >= 300) {
      end(name, null); // Nothing was changed, so the next attempt is a first one.
      return;
    }
    byte[] body = new byte[0];
    InputStream written = ctx.resultInputStream();
    if (written != null) {
      body = written.readAllBytes();
      ctx.result(body);
    }
    String mediaType = String.valueOf(ctx.res().getContentType());
    String content = String.valueOf((Object) ctx.attribute(CONTENT));
    end(name, new Answer(clock.instant(), content, ctx.statusCode(), body, mediaType));
  }

  private synchronized @Nullable Answer begin(String name, String content) {
    Instant now = clock.instant();
    answers.values().removeIf(answer -> answer.at().plus(MEMORY).isBefore(now));
    return answers.putIfAbsent(name, new Answer(now, content, 0, null, ""));
  }

  private synchronized void end(String name, @Nullable Answer answer) {
    answers.remove(name);
    if (answer != null) {
      answers.put(name, answer);
      if (answers.size() > MOST_ANSWERS) {
        answers.remove(answers.keySet().iterator().next());
      }
    }
  }

  private static String shown(@Nullable String key) {
    return key == null ? "" : key.substring(0, Math.min(key.length(), 80));
  }
}
