package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;

/**
 * A shed that is given another build of its site, while a phone has a page of the one before open
 * or is out of reach. The builds tell themselves apart by a word of the frame and a word of a page;
 * what a phone shows must be of one build.
 */
class UpgradeTest {
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  private static final Map<String, String> NEXT =
      Map.of(
          "/lib/words.js",
          SiteSource.OWN.text("/lib/words.js").replace("alarms: 'Alarms'", "alarms: 'Warnings'"),
          "/you/words.js",
          SiteSource.OWN.text("/you/words.js").replace("name: 'Name'", "name: 'Nickname'"));

  @RegisterExtension static final OpenSite site = new OpenSite();

  @BeforeEach
  void forgetWhatAnotherTestKept() {
    site.open("/icon.svg");
    site.browser()
        .driver()
        .executeCdpCommand(
            "Storage.clearDataForOrigin",
            Map.of("origin", site.address(""), "storageTypes", "all"));
  }

  @Test
  void aPageThatIsOpenMeanwhileGoesOnToAPageOfTheNewBuild_allOfIt() {
    site.open("/lots");
    site.awaitText(".lot-row", "D1");
    awaitKept();

    site.upgrade(NEXT);
    follow("Sign in");

    site.awaitText("you-page", "Nickname");
    site.awaitText("nav", "Warnings");
    awaitOneBuildKept();
  }

  @Test
  void aPageThatStaysOpenSaysThatTheShedWasUpdated_andNothingElseOfItIsTouched() {
    site.open("/lots");
    site.awaitText(".lot-row", "D1");
    assertThat(site.browser().driver().findElements(By.cssSelector(".stale-banner"))).isEmpty();
    awaitKept();

    site.upgrade(NEXT);

    site.awaitText("stale-banner", "The shed was updated since this page was opened.");
    site.awaitText("nav", "Alarms");
    site.find("stale-banner button").click();
    site.awaitText("nav", "Warnings");
    site.awaitText(".lot-row", "D1");
    assertThat(site.browser().driver().findElements(By.cssSelector(".stale-banner"))).isEmpty();
  }

  @Test
  void aPhoneThatKeepsNothingIsNotGivenAPageOfOneBuildInTheFrameOfAnother() {
    site.callByName(); // Without encryption a browser lets no worker keep anything.
    site.open("/lots");
    site.awaitText(".lot-row", "D1");

    site.upgrade(NEXT);
    follow("Sign in");

    site.awaitText("you-page", "Nickname");
    site.awaitText("nav", "Warnings");
  }

  @Test
  void aPhoneOutOfReachMeanwhileShowsAllOfTheOldBuild_andOnceItIsBackAllOfTheNew() {
    site.open("/you");
    site.awaitText("you-page", "Name");
    awaitKept();
    site.browser().driver().navigate().refresh(); // Now what is seen is kept too.
    site.awaitText("you-page", "Name");
    await()
        .atMost(PATIENCE)
        .until(() -> kept().stream().anyMatch(f -> f.startsWith("/you/you.js")));
    String before = builds().get(0);
    site.stop();
    site.browser().driver().navigate().refresh();
    site.awaitText("you-page", "Name");
    follow("Lots");
    site.awaitText("lots-page", "does not answer");
    site.awaitText("nav", "Alarms");

    site.upgrade(NEXT);
    site.browser().driver().navigate().refresh();
    site.awaitText("nav", "Warnings");
    site.awaitText("lots-page", "D1");
    await().atMost(PATIENCE).until(() -> !builds().contains(before));
    awaitOneBuildKept();

    site.stop();
    site.browser().driver().navigate().refresh();
    site.awaitText("nav", "Warnings");
    site.awaitText("lots-page", "D1");
    follow("Sign in");
    site.awaitText("you-page", "Nickname");
    site.browser().complaints();
  }

  @Test
  void aPageWhoseBuildIsKeptNoLongerBeginsAnewWithTheOneThatIs() {
    site.open("/alarms");
    site.awaitText("nav", "Alarms");
    awaitKept();
    String before = builds().get(0);

    site.upgrade(NEXT);
    site.script("navigator.serviceWorker.getRegistration().then((worker) => worker.update())");
    await().atMost(PATIENCE).until(() -> !builds().contains(before));
    awaitOneBuildKept();
    site.stop();
    site.browser().driver().executeCdpCommand("Network.clearBrowserCache", Map.of());
    follow("Lots");

    site.awaitText("lots-page", "does not answer");
    site.awaitText("nav", "Warnings");
    site.browser().complaints();
  }

  private static void follow(String link) {
    await()
        .atMost(PATIENCE)
        .ignoreExceptions() // The page is drawn anew at any moment.
        .until(
            () -> {
              site.browser().driver().findElement(By.linkText(link)).click();
              return true;
            });
  }

  private static void awaitKept() {
    await()
        .atMost(PATIENCE)
        .until(
            () ->
                Boolean.TRUE.equals(
                    site.script("return navigator.serviceWorker.controller !== null")));
  }

  /** Whatever is kept is of one build, and named by it. */
  private static void awaitOneBuildKept() {
    await()
        .atMost(PATIENCE)
        .untilAsserted(
            () -> {
              assertThat(builds()).hasSize(1);
              String build = builds().get(0).replaceFirst("^site-", "");
              assertThat(kept())
                  .as("what is kept in %s", builds())
                  .isNotEmpty()
                  .allMatch(file -> file.startsWith("/lib/") || file.endsWith("?" + build));
            });
  }

  @SuppressWarnings("unchecked")
  private static List<String> builds() {
    return (List<String>) site.script("return caches.keys()");
  }

  @SuppressWarnings("unchecked")
  private static List<String> kept() {
    return (List<String>)
        site.script(
            """
            return caches.keys()
              .then((names) => Promise.all(names.map((name) => caches.open(name))))
              .then((stores) => Promise.all(stores.map((store) => store.keys())))
              .then((files) => files.flat().map(({ url }) => url.replace(location.origin, '')));
            """);
  }
}
