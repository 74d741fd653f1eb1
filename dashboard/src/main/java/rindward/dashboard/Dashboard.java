package rindward.dashboard;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.json.JavalinJackson;
import io.javalin.router.ParsedEndpoint;
import java.io.InputStream;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jetty.http.HttpVersion;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.NanoTime;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import rindward.dashboard.alarms.AlarmsRoutes;
import rindward.dashboard.entrance.Connections;
import rindward.dashboard.entrance.OwnNames;
import rindward.dashboard.entrance.ThreadShare;
import rindward.dashboard.entrance.WholeRequests;
import rindward.dashboard.live.LiveHub;
import rindward.dashboard.lots.LotsRoutes;
import rindward.dashboard.placards.PlacardRoutes;
import rindward.dashboard.request.JsonBody;
import rindward.dashboard.request.Replays;
import rindward.dashboard.rooms.ClimateRoutes;
import rindward.dashboard.rooms.RoomsRoutes;
import rindward.dashboard.shed.RecordRoutes;
import rindward.dashboard.shed.ShedRoutes;
import rindward.dashboard.signin.Access;
import rindward.dashboard.signin.Gate;
import rindward.dashboard.signin.PeopleRoutes;
import rindward.dashboard.signin.SignIn;
import rindward.dashboard.signin.SignInRoutes;
import rindward.dashboard.tastings.TastingsRoutes;
import rindward.dashboard.varieties.VarietiesRoutes;

/**
 * The web server: pages, JSON API, live stream and metrics. Sized for a small board; an open page
 * holds a connection but no thread.
 *
 * <p>{@link #start} and {@link #close} are called once each, by whoever wires the daemon.
 */
public final class Dashboard implements AutoCloseable {

  /** At most as many as can wait on a slow card at once; the server itself needs three. */
  private static final int MAX_THREADS = 12;

  private static final int MIN_THREADS = 3;
  private static final Duration IDLE_THREAD = Duration.ofMinutes(1);
  private static final int MOST_HEADER_BYTES = 4 * 1024;
  private static final Duration HEARTBEAT = Duration.ofSeconds(15);

  private final DashboardSettings settings;
  private final Desks desks;
  private final Supplier<String> metrics;
  private final InstantSource clock;
  private final SignIn signIn;
  private final Duration heartbeat;
  private final ObjectMapper json =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .build();
  private final Site site;
  private final SecurityHeaders headers;
  private final ErrorResponses errors = new ErrorResponses(json);
  private final LiveHub live;
  private final Connections connections = new Connections(NanoTime::now);
  private final Executor connectionMinding;
  private final ScheduledExecutorService watch =
      Executors.newSingleThreadScheduledExecutor(Dashboard::watchThread);
  private final Javalin server;

  /**
   * @param desks answers what the pages ask
   * @param metrics returns the text of {@code /metrics} in the Prometheus exposition format
   * @param clock by which sessions end and guessing is slowed down
   */
  public Dashboard(
      DashboardSettings settings, Desks desks, Supplier<String> metrics, InstantSource clock) {
    this(settings, desks, metrics, clock, Supervision.NONE);
  }

  /**
   * The same under somebody's supervision.
   *
   * @param supervision of what runs by itself
   */
  public Dashboard(
      DashboardSettings settings,
      Desks desks,
      Supplier<String> metrics,
      InstantSource clock,
      Supervision supervision) {
    this(
        settings,
        desks,
        metrics,
        clock,
        new SignIn(desks.signIn(), clock),
        new Site(SiteSource.OWN),
        HEARTBEAT,
        supervision);
  }

  Dashboard(
      DashboardSettings settings,
      Desks desks,
      Supplier<String> metrics,
      InstantSource clock,
      SignIn signIn,
      Site site,
      Duration heartbeat) {
    this(settings, desks, metrics, clock, signIn, site, heartbeat, Supervision.NONE);
  }

  Dashboard(
      DashboardSettings settings,
      Desks desks,
      Supplier<String> metrics,
      InstantSource clock,
      SignIn signIn,
      Site site,
      Duration heartbeat,
      Supervision supervision) {
    this.settings = settings;
    this.desks = desks;
    this.metrics = metrics;
    this.clock = clock;
    this.signIn = signIn;
    this.site = site;
    this.headers = new SecurityHeaders(site.importMap());
    this.heartbeat = heartbeat;
    this.live = new LiveHub(json.writer(), heartbeat, supervision.of(Supervision.LIVE_PAGES));
    this.connectionMinding = supervision.of(Supervision.CONNECTIONS);
    this.server = Javalin.create(this::configure);
  }

  /**
   * Begins to listen.
   *
   * @throws IllegalStateException when the address or port cannot be used, naming both
   */
  public void start() {
    try {
      server.start();
      var unused = watch.scheduleWithFixedDelay(this::mindConnections, 1, 1, TimeUnit.SECONDS);
    } catch (RuntimeException e) {
      close();
      throw new IllegalStateException(
          "the dashboard could not listen on %s port %d; is another program using it?"
              .formatted(settings.bindAddress(), settings.port()),
          e);
    }
  }

  private void mindConnections() {
    connectionMinding.execute(connections::look);
  }

  /** Returns the port that is listened on, also where the settings left the choice open. */
  public int port() {
    return server.port();
  }

  /**
   * Hands over a one-time code if the farm has no owner yet: whoever has it may set the owner's
   * password. Not needed again once there is one.
   */
  public void announceCode(Consumer<String> announce) {
    signIn.announceCode(announce);
  }

  /** Returns the stream to which the controller publishes each new state. */
  public LiveHub live() {
    return live;
  }

  /** Ends every stream, then the server. */
  @Override
  public void close() {
    watch.shutdownNow();
    live.close();
    server.stop();
  }

  private void configure(JavalinConfig config) {
    config.startup.showJavalinBanner = false;
    config.startup.startupWatcherEnabled = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.http.maxRequestSize = JsonBody.MAX_BYTES;
    config.jsonMapper(new JavalinJackson(json, false));
    config.jetty.threadPool = threads();
    config.jetty.modifyServer(this::guard);
    config.jetty.addConnector(this::connector);
    routes(config.routes);
  }

  private void guard(Server jetty) {
    jetty.setErrorHandler(errors);
    WholeRequests whole = new WholeRequests(connections, JsonBody.MAX_BYTES);
    whole.setHandler(new ThreadShare(connections));
    jetty.setHandler(whole);
  }

  private void know(Context ctx) {
    if (Gate.caller(ctx).role() != null) {
      connections.know(ctx.ip());
    }
  }

  private void routes(RoutesConfig routes) {
    routes.before(headers::set);
    routes.before(new OwnNames(settings.names())::check);
    routes.before(
        "/api/*",
        ctx -> ctx.header("Cache-Control", "no-store").header("Site-Build", site.buildName()));
    errors.add(routes);
    new Gate(signIn, settings.openReading()).add(routes);
    routes.beforeMatched(this::know);
    new Replays(clock, ctx -> Gate.caller(ctx).name()).add(routes);
    RoomsRoutes.add(routes, desks.rooms(), live);
    ClimateRoutes.add(routes, desks.climate());
    LotsRoutes.add(routes, desks.lots());
    TastingsRoutes.add(routes, desks.tastings());
    VarietiesRoutes.add(routes, desks.varieties());
    ShedRoutes.add(routes, desks.shed());
    RecordRoutes.add(routes, desks.record());
    AlarmsRoutes.add(routes, desks.alarms());
    PlacardRoutes.add(routes, desks.squares());
    SignInRoutes.add(routes, signIn, settings.openReading());
    PeopleRoutes.add(routes, signIn, desks.signIn());
    routes.get(
        "/metrics",
        ctx -> ctx.contentType("text/plain; version=0.0.4; charset=utf-8").result(metrics.get()),
        Access.READER);
    routes.get(
        "/api/openapi.json",
        ctx -> ctx.contentType("application/json").result(apiDescription()),
        Access.ANYONE);
    site.add(routes);
  }

  /** Lists every route as it was registered, method and path, with who may call it. */
  List<ParsedEndpoint> endpoints() {
    return server.unsafe.internalRouter.allHttpHandlers();
  }

  private static InputStream apiDescription() {
    InputStream file = Dashboard.class.getResourceAsStream("openapi.json");
    if (file == null) {
      throw new IllegalStateException("openapi.json is missing from the class path");
    }
    return file;
  }

  private Connector connector(Server jetty, HttpConfiguration http) {
    http.setRequestHeaderSize(MOST_HEADER_BYTES);
    HttpConnectionFactory plain = new HttpConnectionFactory(http);
    ServerIdentity identity = settings.identity();
    ServerConnector connector =
        identity == null
            ? new ServerConnector(jetty, 1, 1, plain)
            : new ServerConnector(jetty, 1, 1, encrypted(identity, http), plain);
    connector.addBean(connections);
    connector.setHost(settings.bindAddress());
    connector.setPort(settings.port());
    // A heartbeat that cannot be written for this long means that nobody is there.
    connector.setIdleTimeout(heartbeat.multipliedBy(2).toMillis());
    return connector;
  }

  private static SslConnectionFactory encrypted(ServerIdentity identity, HttpConfiguration http) {
    SslContextFactory.Server ssl = new SslContextFactory.Server();
    ssl.setKeyStore(identity.store());
    ssl.setKeyStorePassword(identity.password());
    // A phone may know the shed by its number only, which no certificate of a farm names.
    http.addCustomizer(new SecureRequestCustomizer(false));
    return new SslConnectionFactory(ssl, HttpVersion.HTTP_1_1.asString());
  }

  private static Thread watchThread(Runnable work) {
    Thread thread = new Thread(work, "connections");
    thread.setDaemon(true);
    return thread;
  }

  private static QueuedThreadPool threads() {
    QueuedThreadPool threads =
        new QueuedThreadPool(MAX_THREADS, MIN_THREADS, (int) IDLE_THREAD.toMillis());
    threads.setName("dashboard");
    return threads;
  }
}
