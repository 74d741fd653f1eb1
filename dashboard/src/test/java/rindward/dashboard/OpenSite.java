package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/**
 * One browser for a class of tests, and for each test a fresh invented shed whose pages it shows on
 * a phone in daylight, signed out.
 */
final class OpenSite
    implements BeforeAllCallback, AfterAllCallback, BeforeEachCallback, AfterEachCallback {
  private static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final String THIS_MACHINE = "127.0.0.1";

  private final Supplier<Browser> opened;
  private Browser browser;
  private ServedShed served;
  private String host = THIS_MACHINE;

  OpenSite() {
    this(Browser::open);
  }

  /**
   * @param opened opens the browser
   */
  OpenSite(Supplier<Browser> opened) {
    this.opened = opened;
  }

  Browser browser() {
    return browser;
  }

  InventedShed shed() {
    return served.shed();
  }

  void open(String path) {
    browser.driver().get(address(path));
  }

  String address(String path) {
    return "http://" + host + ":" + served.dashboard().port() + path;
  }

  /**
   * Has the shed called by its name in the farm's network for the rest of the test. A browser
   * trusts a page of its own machine; one of another that comes without encryption it trusts with
   * less.
   */
  void callByName() {
    host = Browser.SHED;
  }

  /** Stops the server, as if the phone were out of its reach. */
  void stop() {
    served.stop();
  }

  /** Stops the server and starts another build of the site, in which these files differ. */
  void upgrade(Map<String, String> otherFiles) {
    served.stop();
    served.build(otherFiles);
    served.startAgain();
  }

  /** Makes the invented farm's owner on the page itself. */
  void becomeOwner() {
    open("/you");
    awaitText("sign-in-form", "code");
    field("code").sendKeys(served.code());
    field("name").sendKeys("Wren");
    field("password").sendKeys("a russet gourd");
    field("password").submit();
    awaitText("you-page", "Wren may do everything");
  }

  /** Ends the server and starts it again at the same address. */
  void restart() {
    served.restart(true);
  }

  WebElement field(String name) {
    return find("[name='" + name + "']");
  }

  /**
   * Returns the first element that matches, once there is one: what opens over a page comes later.
   */
  WebElement find(String selector) {
    return await()
        .atMost(PATIENCE)
        .pollDelay(Duration.ZERO)
        .ignoreExceptions()
        .until(
            () -> browser.driver().findElement(By.cssSelector(selector)), found -> found != null);
  }

  /** Returns the button that says this and can be seen. */
  WebElement button(String label) {
    return await()
        .atMost(PATIENCE)
        .ignoreExceptions()
        .until(
            () ->
                browser.driver().findElements(By.tagName("button")).stream()
                    .filter(b -> b.isDisplayed() && b.getText().strip().equals(label))
                    .findFirst()
                    .orElseThrow(),
            found -> found != null);
  }

  /** Gives or takes away the network, as the browser and its workers see it. */
  void network(boolean on) {
    browser.driver().executeCdpCommand("Network.enable", Map.of());
    browser
        .driver()
        .executeCdpCommand(
            "Network.emulateNetworkConditions",
            Map.of("offline", !on, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
  }

  /** Fails when a key of the open dialog is too small for a gloved finger. */
  void assertKeysFitGloves() {
    assertThat(
            script(
                "return [...document.querySelectorAll('dialog button, dialog input:not([hidden]),"
                    + " dialog select')].filter(b => b.getBoundingClientRect().height < 48).map(b"
                    + " => b.outerHTML)"))
        .asList()
        .isEmpty();
  }

  Object script(String script, Object... arguments) {
    return browser.driver().executeScript(script, arguments);
  }

  void awaitText(String selector, String... parts) {
    await()
        .atMost(PATIENCE)
        .ignoreExceptions()
        .untilAsserted(() -> assertThat(browser.text(selector)).contains(parts));
  }

  /** Fails when the page would be hard to use for somebody, or hangs over its edge. */
  void assertUsableByEverybody() {
    assertThat(
            new AxeBuilder()
                .analyze(browser.driver()).getViolations().stream().map(Rule::toString).toList())
        .isEmpty();
    assertThat(script("return document.documentElement.scrollWidth <= innerWidth"))
        .as("nothing hangs over the edge")
        .isEqualTo(true);
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    browser = opened.get();
  }

  @Override
  public void beforeEach(ExtensionContext context) {
    served = new ServedShed(InstantSource.system());
    served.beforeEach(context);
    host = THIS_MACHINE;
    browser.size(390, 844);
    browser.prefer("prefers-color-scheme", "light");
    browser.driver().manage().deleteAllCookies();
  }

  @Override
  public void afterEach(ExtensionContext context) {
    browser.driver().get("about:blank"); // No page is left to complain of a server that went away.
    browser.complaints();
    served.afterEach(context);
  }

  @Override
  public void afterAll(ExtensionContext context) {
    if (browser != null) {
      browser.close();
    }
  }
}
