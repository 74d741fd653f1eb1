package rindward.dashboard;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * A real browser without a window, with a new and empty profile. Where none is installed its tests
 * are skipped with a message, but never on the build server, which sets {@code CI=true}.
 */
final class Browser implements AutoCloseable {

  /** Another name of this machine, as if it were elsewhere. */
  static final String SHED = "shed.test";

  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  private final ChromeDriver driver;
  private final Map<String, String> wishes = new HashMap<>();

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  static Browser open() {
    LoggingPreferences log = new LoggingPreferences();
    log.enable(LogType.BROWSER, Level.WARNING);
    return open(log);
  }

  /** As above; its camera, which it may use unasked, shows a film over and over. */
  static Browser openWithCamera(Path film) {
    LoggingPreferences log = new LoggingPreferences();
    log.enable(LogType.BROWSER, Level.WARNING);
    return open(
        log,
        "--use-fake-ui-for-media-stream",
        "--use-fake-device-for-media-stream",
        "--use-file-for-fake-video-capture=" + film);
  }

  /** As above; it notes besides whatever goes over the wire. */
  static Browser openWithWire() {
    LoggingPreferences log = new LoggingPreferences();
    log.enable(LogType.PERFORMANCE, Level.ALL);
    return open(log);
  }

  private static Browser open(LoggingPreferences log, String... more) {
    boolean installed = Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER);
    if (!installed && "true".equals(System.getenv("CI"))) {
      throw new IllegalStateException(
          "browser tests need " + CHROMIUM + " and " + DRIVER + ", and CI must not skip them");
    }
    assumeTrue(installed, "skipped: no browser at " + CHROMIUM + " with a driver at " + DRIVER);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM.toFile());
    options.setCapability(ChromeOptions.LOGGING_PREFS, log);
    options.setExperimentalOption("prefs", Map.of("intl.accept_languages", "en-GB"));
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--host-resolver-rules=MAP " + SHED + " 127.0.0.1",
        "--user-data-dir=" + emptyProfile());
    options.addArguments(more);
    File driverFile = DRIVER.toFile();
    return new Browser(
        new ChromeDriver(
            new ChromeDriverService.Builder().usingDriverExecutable(driverFile).build(), options));
  }

  ChromeDriver driver() {
    return driver;
  }

  /** Sets the page's size, in its own pixels, whatever the window can do. */
  void size(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 500));
  }

  /** Sets what the page is told of the reader's wishes, such as {@code prefers-color-scheme}. */
  void prefer(String feature, String value) {
    wishes.put(feature, value);
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            wishes.entrySet().stream()
                .map(wish -> Map.of("name", wish.getKey(), "value", wish.getValue()))
                .toList()));
  }

  /** Returns what a reader sees of the first element that matches. */
  String text(String selector) {
    return driver.findElement(By.cssSelector(selector)).getText();
  }

  /**
   * Returns what the browser has complained of since it was last asked. What a worker says that was
   * being fetched as its site went away is left out: it comes when the next test is under way.
   */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        .filter(message -> !message.contains("when fetching the script"))
        .filter(message -> !message.contains("/worker.js"))
        .toList();
  }

  @Override
  public void close() {
    driver.quit();
  }

  private static Path emptyProfile() {
    try {
      Path profile = Files.createTempDirectory("rindward-browser");
      profile.toFile().deleteOnExit();
      return profile;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
