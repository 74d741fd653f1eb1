package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import rindward.dashboard.signin.SignIn;

/**
 * A fresh invented shed for each test, served on a free port until the test is over, and the people
 * who sign in there: all with one password, so that a test says only who comes and what they may.
 */
final class ServedShed implements BeforeEachCallback, AfterEachCallback {
  /** Of a password's hash; safe ones would take most of the tests' time. */
  static final int CHEAP = 4;

  private static final String TESTS = "/tests";
  private static final String PASSWORD = "a russet gourd";

  private final InstantSource clock;
  private final InventedShed shed;
  private final RememberedSignIn people = new RememberedSignIn();
  private final List<String> codes = new ArrayList<>();
  private Dashboard dashboard;
  private Client stranger;
  private SiteSource site = ServedShed::siteAndTests;
  private int port;

  /** A shed in which all is well at this time, by which also sessions end. */
  ServedShed(InstantSource clock) {
    this.clock = clock;
    this.shed = new InventedShed(InventedShed.well(clock.instant(), 27.4));
  }

  InventedShed shed() {
    return shed;
  }

  RememberedSignIn people() {
    return people;
  }

  Dashboard dashboard() {
    return dashboard;
  }

  /** Returns the one-time codes that were announced so far. */
  List<String> codes() {
    return codes;
  }

  /** Returns the code that makes somebody the owner. */
  String code() {
    return codes.get(0);
  }

  /** Returns a new client that is signed out. */
  Client client() {
    return new Client(dashboard.port());
  }

  /** Tries to make Wren the owner by a code, with one client for all attempts. */
  HttpResponse<String> setUp(String code) {
    String body = "{\"code\":\"%s\",\"name\":\"Wren\",\"password\":\"%s\"}";
    return stranger.post("/api/set-up", body.formatted(code, PASSWORD));
  }

  /** Makes Wren the owner, and returns her client. */
  Client owner() {
    return client().signedInBy(setUp(code()));
  }

  /** Lets the owner make somebody {@code helper}, {@code panelist} or {@code owner}. */
  void add(Client owner, String name, String role) {
    String body = "{\"role\":\"%s\",\"password\":\"%s\"}".formatted(role, PASSWORD);
    assertThat(owner.put("/api/people/" + name, body).statusCode()).isEqualTo(200);
  }

  /** Returns the client of somebody who has signed in. */
  Client signIn(String name) {
    return client().signedInBy(client().post("/api/sign-in", signInOf(name)));
  }

  /** Returns what somebody sends to sign in. */
  static String signInOf(String name) {
    return "{\"name\":\"%s\",\"password\":\"%s\"}".formatted(name, PASSWORD);
  }

  /** Ends the server and starts it again at the same address. */
  void restart(boolean openReading) {
    stop();
    serve(port, openReading);
  }

  /** Serves another build of the site from the next start on, in which these files differ. */
  void build(Map<String, String> otherFiles) {
    site =
        path ->
            otherFiles.containsKey(path)
                ? otherFiles.get(path).getBytes(StandardCharsets.UTF_8)
                : SiteSource.OWN.own(path);
  }

  /** Starts the server at the address where it was stopped. */
  void startAgain() {
    serve(port, true);
  }

  /** Stops the server, as if it were out of reach. */
  void stop() {
    dashboard.close();
  }

  /** Returns a file of the site, or under {@code /tests} one of its modules' tests. */
  private static byte @Nullable [] siteAndTests(String path) {
    String inTests = "/site-tests" + path.substring(path.startsWith(TESTS) ? TESTS.length() : 0);
    try (InputStream in = ServedShed.class.getResourceAsStream(inTests)) {
      return path.startsWith(TESTS) && in != null ? in.readAllBytes() : SiteSource.OWN.own(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void serve(int at, boolean openReading) {
    dashboard =
        new Dashboard(
            new DashboardSettings("127.0.0.1", at, List.of(Browser.SHED), openReading, null),
            shed.desks(people),
            () -> "up 1\n",
            clock,
            new SignIn(people, clock, CHEAP),
            new Site(site),
            Duration.ofSeconds(15));
    dashboard.start();
    port = dashboard.port();
  }

  @Override
  public void beforeEach(ExtensionContext context) {
    serve(0, true);
    dashboard.announceCode(codes::add);
    stranger = client();
  }

  @Override
  public void afterEach(ExtensionContext context) {
    stop();
  }
}
