package rindward.dashboard;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.awaitility.Awaitility;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * What a page costs on a slow phone that has never seen it: bytes over the wire, and the time until
 * it shows what it is for. Prints one table about the demo; run by {@code mvn -Pquick,benchmark
 * verify}.
 *
 * <p>The phone is a headless browser whose network answers 150 ms late and carries 1.6 Mbit/s down
 * and 750 kbit/s up, whose processor is slowed to a quarter, and which keeps nothing. A page is
 * usable once its marker has a text, or is a chart, and is painted, and nothing on the page is
 * busy.
 */
public final class SlowPhone {
  private static final int TIMES = 5;
  private static final int WIDTH = 390;
  private static final int HEIGHT = 844;
  private static final int LATENCY_MS = 150;
  private static final int DOWN_BYTES_A_SECOND = 200_000;
  private static final int UP_BYTES_A_SECOND = 93_750;
  private static final int SLOWER = 4;
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  /** Notes when the marker's text has been painted, and nothing is busy any more. */
  private static final String NOTES_WHEN_USABLE =
      """
      new MutationObserver((_, observer) => {
        const marker = document.querySelector('%s');
        const shown = marker?.textContent.trim() || marker instanceof HTMLCanvasElement;
        if (shown && !document.querySelector('[aria-busy=true]')) {
          observer.disconnect();
          requestAnimationFrame(() => setTimeout(() => (window.usableMs = performance.now())));
        }
      }).observe(document, { attributes: true, characterData: true, childList: true, subtree: true });
      """;

  private final ObjectMapper json = new ObjectMapper();
  private final HttpClient client = HttpClient.newHttpClient();
  private final ChromeDriver driver;
  private final String site;

  private SlowPhone(Browser browser, String site) {
    this.driver = browser.driver();
    this.site = site;
    browser.size(WIDTH, HEIGHT);
    tell("Network.enable", Map.of());
    tell("Network.setCacheDisabled", Map.of("cacheDisabled", true));
    tell("Network.setBypassServiceWorker", Map.of("bypass", true));
    tell(
        "Network.emulateNetworkConditions",
        Map.of(
            "offline",
            false,
            "latency",
            LATENCY_MS,
            "downloadThroughput",
            DOWN_BYTES_A_SECOND,
            "uploadThroughput",
            UP_BYTES_A_SECOND));
    tell("Emulation.setCPUThrottlingRate", Map.of("rate", SLOWER));
  }

  private record Load(double usableMs, long bytes, int requests) {}

  /**
   * @param args the jar whose demo is looked at
   */
  public static void main(String[] args) throws Exception {
    Path home = Files.createTempDirectory("slow-phone");
    int port = freePort();
    Process demo =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.home=" + home,
                "-jar",
                args[0],
                "demo",
                "--port",
                String.valueOf(port))
            .redirectOutput(home.resolve("printed.txt").toFile())
            .redirectErrorStream(true)
            .start();
    try (Browser browser = Browser.openWithWire()) {
      new SlowPhone(browser, "http://127.0.0.1:" + port).print();
    } finally {
      demo.destroy();
      demo.waitFor();
    }
  }

  private void print() throws IOException {
    String lot = firstLot();
    Map<String, String[]> pages = new LinkedHashMap<>();
    pages.put("rooms", new String[] {"/", "room-sheet"});
    pages.put("one room", new String[] {"/room/storage", "air-chart canvas"});
    pages.put("lots", new String[] {"/lots", "lot-row"});
    pages.put("one lot", new String[] {"/lot/" + lot, ".lot-sheet"});
    pages.put("tastings", new String[] {"/tastings", ".tasting-rows"});
    pages.put("varieties", new String[] {"/varieties", "section.type"});
    pages.put("alarms", new String[] {"/alarms", "section.alarms"});
    pages.put("shed", new String[] {"/shed", "section.parts"});
    System.out.println("| | kB | requests | usable, s: median | worst | marker |");
    System.out.println("| --- | ---: | ---: | ---: | ---: | --- |");
    for (Map.Entry<String, String[]> page : pages.entrySet()) {
      String[] where = page.getValue();
      List<Load> loads = new ArrayList<>();
      load(where[0], where[1]); // The phone is new, but the shed has run for long.
      for (int i = 0; i < TIMES; i++) {
        loads.add(load(where[0], where[1]));
      }
      double[] usable = loads.stream().mapToDouble(Load::usableMs).sorted().toArray();
      System.out.printf(
          Locale.ROOT,
          "| %s | %.0f | %d | %.2f | %.2f | `%s` |%n",
          page.getKey(),
          loads.stream().mapToLong(Load::bytes).max().orElseThrow() / 1000.0,
          loads.stream().mapToInt(Load::requests).max().orElseThrow(),
          usable[TIMES / 2] / 1000,
          usable[TIMES - 1] / 1000,
          where[1]);
    }
    System.out.println("\nLoad of the machine: " + Files.readString(Path.of("/proc/loadavg")));
  }

  private Load load(String path, String marker) throws IOException {
    driver.get("about:blank");
    tell("Storage.clearDataForOrigin", Map.of("origin", site, "storageTypes", "all"));
    String script = NOTES_WHEN_USABLE.formatted(marker);
    Object noted =
        driver
            .executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script))
            .get("identifier");
    driver.manage().logs().get(LogType.PERFORMANCE);
    driver.get(site + path);
    double usableMs =
        new WebDriverWait(driver, PATIENCE)
            .until(any -> (Number) driver.executeScript("return window.usableMs ?? null"))
            .doubleValue();
    tell("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", noted));
    long bytes = 0;
    int requests = 0;
    for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
      JsonNode event = json.readTree(entry.getMessage()).at("/message");
      if (event.at("/method").asText().equals("Network.loadingFinished")) {
        bytes += event.at("/params/encodedDataLength").asLong();
        requests++;
      }
    }
    return new Load(usableMs, bytes, requests);
  }

  /** Waits for the demo to be there. */
  private String firstLot() {
    return Awaitility.await()
        .atMost(PATIENCE.multipliedBy(3))
        .ignoreExceptionsInstanceOf(IOException.class)
        .until(this::askForFirstLot, code -> !code.isEmpty());
  }

  private String askForFirstLot() throws IOException, InterruptedException {
    HttpRequest asked = HttpRequest.newBuilder(URI.create(site + "/api/lots")).build();
    String lots = client.send(asked, BodyHandlers.ofString()).body();
    return json.readTree(lots).at("/lots/0/code").asText();
  }

  private void tell(String command, Map<String, Object> parameters) {
    driver.executeCdpCommand(command, parameters);
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }
}
