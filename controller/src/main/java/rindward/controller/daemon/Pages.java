package rindward.controller.daemon;

import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.desk.KeptSignIn;
import rindward.controller.desk.LotAccounts;
import rindward.controller.desk.NowDesk;
import rindward.controller.settings.Settings;
import rindward.controller.snapshot.Snapshot;
import rindward.controller.store.Database;
import rindward.controller.store.Door;
import rindward.controller.store.SignInStore;
import rindward.dashboard.Dashboard;
import rindward.dashboard.DashboardSettings;
import rindward.dashboard.Desks;

/** The pages wired by hand: every desk, and the server that asks them. */
final class Pages {
  private final Settings settings;
  private final NowDesk now;
  private final Desks desks;
  private final Supplier<String> metrics;
  private final Time time;

  Pages(
      Settings settings,
      Database database,
      Door door,
      LotAccounts accounts,
      Supplier<@Nullable Snapshot> latest,
      Supplier<String> metrics,
      Time time) {
    this.settings = settings;
    this.metrics = metrics;
    this.time = time;
    this.now =
        new NowDesk(
            settings.siteName(), settings.altitudeM(), settings.crops(), door, accounts, latest);
    this.desks = new Desks(now, new KeptSignIn(new SignInStore(database)));
  }

  NowDesk now() {
    return now;
  }

  /**
   * Begins to serve.
   *
   * @param announce shows the one-time code by which the first owner signs in, while there is none
   * @throws IllegalStateException when the address cannot be listened on
   */
  Dashboard open(Consumer<String> announce) {
    Dashboard dashboard =
        new Dashboard(
            new DashboardSettings(settings.address(), settings.port(), settings.openReading()),
            desks,
            metrics,
            () -> time.now().at());
    dashboard.start();
    dashboard.announceCode(announce);
    return dashboard;
  }
}
