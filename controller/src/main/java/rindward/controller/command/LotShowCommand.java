package rindward.controller.command;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rindward.controller.crop.Crop;
import rindward.controller.crop.RateCurve;
import rindward.controller.desk.LotAccounts;
import rindward.controller.ledger.LotAccount;
import rindward.controller.ledger.Tally;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Recorded;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.Door;
import rindward.controller.store.Journal;
import rindward.controller.store.SampleLog;
import rindward.controller.store.SampleStore;
import rindward.controller.store.StoreException;

/** {@code lot show}: what a lot has lived through. */
@Command(
    name = "show",
    description = "Show what one lot, or every lot, has lived through.",
    footer = {"", "Example:", "  rindward lot show --settings shed.toml KB1"})
final class LotShowCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private SettingsOption settingsOption = new SettingsOption();

  @Parameters(
      arity = "0..1",
      paramLabel = "CODE",
      description = "Code of the lot; all if not given.")
  private @Nullable String code;

  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  /** The keys of {@code --json}. */
  record Answer(List<LotAnswer> lots) {}

  /** One lot; times in seconds, fractions kept. */
  record LotAnswer(
      String code,
      String crop,
      String variety,
      String place,
      int count,
      Instant harvestedAt,
      @Nullable Instant curedAt,
      Three cureProgress,
      AccountAnswer curing,
      AccountAnswer keeping) {}

  @Override
  public Integer call() {
    Optional<Settings> read = settingsOption.read(spec);
    if (read.isEmpty()) {
      return Main.WRONG_USAGE;
    }
    Settings settings = read.get();
    try (Database database = new Database(settings.store())) {
      List<Recorded> journal = new Door(new Journal(database), settings.crops().keys()).journal();
      List<Lot> lots =
          Lots.of(journal).all().stream()
              .filter(l -> code == null || l.code().equals(code.toUpperCase(Locale.ROOT)))
              .toList();
      if (code != null && lots.isEmpty()) {
        return complain("CODE was '" + code + "' but there is no lot of that code");
      }
      for (Lot lot : lots) {
        if (settings.crops().crop(lot.crop()).isEmpty()) {
          return complain(
              "crop of lot "
                  + lot.code()
                  + " was '"
                  + lot.crop()
                  + "' but the crop guide has no type of that name; add it to the settings");
        }
      }
      SampleStore samples = new SampleStore(database, new SampleLog(database));
      LotAccounts accounts = new LotAccounts(samples::history, settings.hold());
      Instant now = Instant.now();
      List<LotAnswer> answers =
          lots.stream().map(l -> answer(l, settings, accounts, journal, now)).toList();
      print(answers);
      return Main.FINE;
    } catch (StoreException e) {
      spec.commandLine().getErr().println(e.getMessage());
      spec.commandLine().getErr().flush();
      return Main.NOT_WELL;
    }
  }

  private static LotAnswer answer(
      Lot lot, Settings settings, LotAccounts accounts, List<Recorded> journal, Instant now) {
    Crop crop = settings.crops().crop(lot.crop()).orElseThrow();
    LotAccount account = accounts.of(lot, crop, journal, now);
    Tally progress = account.cureProgress();
    return new LotAnswer(
        lot.code(),
        lot.crop(),
        lot.variety(),
        lot.place(),
        lot.count(),
        lot.harvestedAt(),
        account.curedAt(),
        Three.of(progress, RateCurve.WHOLE),
        AccountAnswer.of(account.curing()),
        AccountAnswer.of(account.keeping()));
  }

  private void print(List<LotAnswer> answers) {
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      JsonOutput.print(out, new Answer(answers));
      return;
    }
    for (LotAnswer lot : answers) {
      out.printf(
          Locale.ROOT,
          "%s  %s %s, %d, harvested %s, now in %s%n",
          lot.code(),
          lot.crop(),
          lot.variety(),
          lot.count(),
          lot.harvestedAt(),
          lot.place());
      out.printf(
          Locale.ROOT,
          "  cure     %.0f %%%s%n",
          100 * lot.cureProgress().measured(),
          lot.curedAt() == null ? "" : ", done at " + lot.curedAt());
      row(out, "curing", lot.curing());
      row(out, "keeping", lot.keeping());
    }
    out.flush();
  }

  private static void row(PrintWriter out, String stage, AccountAnswer account) {
    if (account.elapsedSeconds() > 0) {
      out.printf(
          Locale.ROOT,
          "  %-8s in range %.1f h (certain %.1f, possible %.1f) of %.1f h; unknown %.1f h%n",
          stage,
          account.inRange().measured() / 3600,
          account.inRange().certain() / 3600,
          account.inRange().possible() / 3600,
          account.elapsedSeconds() / 3600,
          account.unknownSeconds() / 3600);
    }
  }

  private int complain(String sentence) {
    spec.commandLine().getErr().println(sentence);
    spec.commandLine().getErr().flush();
    return Main.WRONG_USAGE;
  }
}
