package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Base64;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The server as a client meets it, on a free port. */
class DashboardTest {
  private static final Pattern SECOND_MODULE =
      Pattern.compile("</app\\.js\\?([^>]+)>; rel=modulepreload, <([^>]+)>; rel=modulepreload");

  private static final Pattern SCRIPT =
      Pattern.compile("<script([^>]*)>(.*?)</script>", Pattern.DOTALL);
  private static final String NOT_HERE = "There is nothing at this address.";

  private final JsonMapper json = JsonMapper.builder().build();
  private final HttpClient client = HttpClient.newHttpClient();
  private final InventedShed shed =
      new InventedShed(InventedShed.well(Instant.parse("2026-10-03T09:15:30Z"), 27.4));
  private final Dashboard dashboard =
      new Dashboard(
          DashboardSettings.onThisMachine(0), shed.desks(), () -> "up 1\n", InstantSource.system());

  @BeforeEach
  void start() {
    dashboard.start();
  }

  @AfterEach
  void stop() {
    dashboard.close();
  }

  @Test
  void now_answersWithWhatTheDeskSays() throws Exception {
    HttpResponse<String> response = get("/api/now");
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(header(response, "Content-Type")).startsWith("application/json");
    assertThat(header(response, "Cache-Control")).isEqualTo("no-store");
    JsonNode now = json.readTree(response.body());
    assertThat(now.get("at").asText()).isEqualTo("2026-10-03T09:15:30Z");
    assertThat(now.at("/rooms/0/temperatureC").asDouble()).isEqualTo(27.4);
    assertThat(now.at("/rooms/0/outputs/0/reason").asText()).contains("below the middle");
    assertThat(now.at("/toEat/0/code").asText()).isEqualTo("D1");
  }

  @Test
  void now_carriesTheServersDateByWhichPagesTellAge() throws Exception {
    assertThat(header(get("/api/now"), "Date")).endsWith("GMT");
  }

  @Test
  void metrics_areThePlainTextHandedIn() throws Exception {
    HttpResponse<String> response = get("/metrics");
    assertThat(response.body()).isEqualTo("up 1\n");
    assertThat(header(response, "Content-Type")).startsWith("text/plain").contains("version=0.0.4");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/api/now", "/metrics", "/app.js", "/nowhere", "/api/nowhere"})
  void everyResponseTellsTheBrowserWhatNotToDo(String path) throws Exception {
    HttpResponse<String> response = get(path);
    assertThat(header(response, "X-Content-Type-Options")).isEqualTo("nosniff");
    assertThat(header(response, "Referrer-Policy")).isEqualTo("no-referrer");
    assertThat(header(response, "Content-Security-Policy"))
        .contains("default-src 'none'", "frame-ancestors 'none'", "base-uri 'none'")
        .doesNotContain("unsafe");
    assertThat(response.headers().firstValue("Server")).isEmpty();
  }

  @Test
  void theOnlyInlineScriptIsTheImportMapThatThePolicyKnows() throws Exception {
    HttpResponse<String> index = get("/");
    var inline =
        SCRIPT
            .matcher(index.body())
            .results()
            .filter(script -> !script.group(2).isBlank())
            .toList();
    assertThat(inline).hasSize(1);
    byte[] hash =
        MessageDigest.getInstance("SHA-256")
            .digest(inline.get(0).group(2).getBytes(StandardCharsets.UTF_8));
    assertThat(header(index, "Content-Security-Policy"))
        .contains("'sha256-" + Base64.getEncoder().encodeToString(hash) + "'");
    assertThat(index.body()).doesNotContain("style=", "onclick", "http://", "https://");
  }

  @Test
  void everyLibraryOfTheImportMapIsServedFromThisJar() throws Exception {
    String map =
        SCRIPT
            .matcher(get("/").body())
            .results()
            .filter(script -> script.group(1).contains("importmap"))
            .map((MatchResult script) -> script.group(2))
            .findFirst()
            .orElseThrow();
    for (JsonNode url : json.readTree(map).get("imports")) {
      String path = url.asText().endsWith("/") ? url.asText() + "package.json" : url.asText();
      if (path.endsWith(".js")) {
        assertThat(get(path).statusCode()).as(path).isEqualTo(200);
        assertThat(header(get(path), "Cache-Control")).contains("immutable");
      } else {
        assertThat(Site.class.getResource(inJar(path))).as(path).isNotNull();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("rindward.dashboard.PageManifestTest#addresses")
  void aPagesModulesComeInTwoFiles_ofWhichItsHeaderNamesTheSecond(String page) throws Exception {
    String link = header(get(page), "Link");
    Matcher second = SECOND_MODULE.matcher(link);
    assertThat(second.find()).as(link).isTrue();
    String first = "/app.js?" + second.group(1);
    String bundle = get(second.group(2)).body();
    assertThat(bundle).startsWith("import { add, need } from '" + first + "';\nadd({\n");
    assertThat(bundle.lines().filter(line -> line.startsWith("import "))).hasSize(1);
    assertThat(get(first).body().lines()).noneMatch(line -> line.startsWith("import "));
  }

  @Test
  void everySheetComesInOneFile() throws Exception {
    assertThat(get(named("/styles/site.css")).body())
        .contains(".uplot", "rooms-page", "placards-page")
        .doesNotContain("@import");
  }

  @Test
  void aPageThatHasNotChangedIsNotSentAgain() throws Exception {
    String etag = header(get("/lots"), "ETag");
    HttpResponse<String> again =
        client.send(
            HttpRequest.newBuilder(uri("/lots")).header("If-None-Match", etag).build(),
            HttpResponse.BodyHandlers.ofString());
    assertThat(again.statusCode()).isEqualTo(304);
    assertThat(again.body()).isEmpty();
  }

  @Test
  void aFileOfOneBuildIsKeptForEver_andAPageOfAnotherBuildBeginsAnewInsteadOfTakingIt()
      throws Exception {
    assertThat(header(get(named("/app.js")), "Cache-Control"))
        .isEqualTo("max-age=31536000, immutable");
    for (String other : new String[] {"/app.js", "/app.js?another", "/lots/sheets.js?another"}) {
      assertThat(get(other).body()).as(other).isEqualTo("location.reload();\n");
      assertThat(header(get(other), "Cache-Control")).isEqualTo("no-store");
    }
    assertThat(get("/styles/site.css?another").statusCode()).isEqualTo(410);
    assertThat(get("/index.html?another").statusCode()).isEqualTo(410);
  }

  @Test
  void theIndexNamesTheFilesOfItsOwnBuildOnly() throws Exception {
    String index = get("/").body();
    assertThat(index)
        .contains("href=\"" + named("/styles/site.css") + "\"")
        .contains("<script async src=\"" + named("/early.js") + "\"")
        .contains("<script type=\"module\" src=\"" + named("/app.js") + "\"");
    assertThat(get("/worker.js").body()).contains(named("/app.js"), named("/lots/lot.js"));
  }

  @Test
  void aPathThatDoesNotExistIsAProblem() throws Exception {
    HttpResponse<String> response = get("/api/nowhere");
    assertThat(response.statusCode()).isEqualTo(404);
    assertThat(header(response, "Content-Type")).startsWith(Problem.MEDIA_TYPE);
    assertThat(json.readValue(response.body(), Problem.class))
        .isEqualTo(new Problem("about:blank", "Not Found", 404, NOT_HERE));
  }

  @Test
  void whoOpensAnAddressWithNothingThereGetsThePageThatSaysSo() throws Exception {
    HttpResponse<String> response =
        client.send(
            HttpRequest.newBuilder(uri("/no/such/place"))
                .header("Accept", "text/html,application/xhtml+xml;q=0.9,*/*;q=0.8")
                .build(),
            HttpResponse.BodyHandlers.ofString());
    assertThat(response.statusCode()).isEqualTo(404);
    assertThat(header(response, "Content-Type")).startsWith("text/html");
    assertThat(response.body()).contains("<shed-app>");
  }

  @Test
  void aMethodThatIsNotAllowedIsAProblem() throws Exception {
    HttpResponse<String> response =
        client.send(
            HttpRequest.newBuilder(uri("/api/now"))
                .POST(HttpRequest.BodyPublishers.ofString("{}"))
                .build(),
            HttpResponse.BodyHandlers.ofString());
    assertThat(response.statusCode()).isBetween(404, 405);
    assertThat(header(response, "Content-Type")).startsWith(Problem.MEDIA_TYPE);
  }

  @Test
  void aFailingDeskIsAProblemThatGivesNothingAway() throws Exception {
    shed.fail(new IllegalStateException("the secret is in /var/lib"));
    HttpResponse<String> response = get("/api/now");
    assertThat(response.statusCode()).isEqualTo(500);
    assertThat(header(response, "Content-Type")).startsWith(Problem.MEDIA_TYPE);
    assertThat(response.body()).doesNotContain("secret", "Exception", "rindward", "\tat ");
  }

  /** Sent byte for byte: a client library would tidy most of these up. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../logging.properties",
        "/lib/../../META-INF/MANIFEST.MF",
        "/lib/%2e%2e/%2e%2e/rindward/dashboard/Site.class",
        "/..%2f..%2fetc%2fpasswd",
        "/%2e%2e/%2e%2e/etc/passwd",
        "/lib//etc/passwd",
        "/rindward/dashboard/Site.class",
        "/lib/lit/3.3.1/package.json",
        "/styles/",
        "/lib",
        "/app.js/",
        "/app.js%00.html",
        "/..\\..\\secret.js",
        "/a;/../app.js"
      })
  void nothingButTheSiteIsReachable(String path) throws IOException {
    String response =
        raw("GET " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
    assertThat(response).matches(Pattern.compile("HTTP/1.1 40[04] .*", Pattern.DOTALL));
    assertThat(response).contains(Problem.MEDIA_TYPE).doesNotContain("root:", "\tat ");
  }

  @Test
  void aMalformedRequestIsAProblemWithoutAnyTrace() throws IOException {
    String response = raw("GET / HTTP/1.1\r\nno colon here\r\n\r\n");
    assertThat(response).contains(Problem.MEDIA_TYPE).doesNotContain("\tat ", "Exception");
  }

  @Test
  void start_portTaken_saysWhichAddressAndPort() {
    Dashboard second =
        new Dashboard(
            DashboardSettings.onThisMachine(dashboard.port()),
            shed.desks(),
            () -> "",
            InstantSource.system());
    assertThatThrownBy(second::start)
        .isInstanceOf(IllegalStateException.class)
        .hasMessage(
            "the dashboard could not listen on 127.0.0.1 port %d; is another program using it?",
            dashboard.port());
  }

  @Test
  void settings_portOutOfRange_saysWhatItMustBe() {
    assertThatThrownBy(() -> DashboardSettings.onThisMachine(70_000))
        .hasMessage("port was '70000' but it must be 0 to 65535");
  }

  private HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return client.send(
        HttpRequest.newBuilder(uri(path)).build(), HttpResponse.BodyHandlers.ofString());
  }

  /** Returns the address of a file of the build that is served. */
  private String named(String file) throws IOException, InterruptedException {
    Matcher named = Pattern.compile("/app\\.js(\\?[A-Za-z0-9-]+)").matcher(get("/").body());
    assertThat(named.find()).isTrue();
    return file + named.group(1);
  }

  private String raw(String request) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), dashboard.port())) {
      socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private URI uri(String path) {
    return URI.create("http://127.0.0.1:" + dashboard.port() + path);
  }

  private static String inJar(String path) {
    return "/META-INF/resources/webjars" + path.substring("/lib".length());
  }

  private static String header(HttpResponse<String> response, String name) {
    return response.headers().firstValue(name).orElse("");
  }
}
