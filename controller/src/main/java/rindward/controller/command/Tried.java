package rindward.controller.command;

import java.nio.file.Files;
import java.util.List;
import rindward.controller.lot.Lots;
import rindward.controller.lot.OutputTried;
import rindward.controller.lot.Recorded;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.store.Database;
import rindward.controller.store.Door;
import rindward.controller.store.Journal;
import rindward.controller.store.StoreException;

/** Which outputs somebody has tried, as they are wired now. One that was moved counts as new. */
final class Tried {
  private Tried() {}

  /** Returns the settings with every room run whose outputs were all tried. */
  static Settings in(Settings settings) {
    if (settings.isSimulated() || !Files.exists(settings.store())) {
      return settings;
    }
    try (Database database = new Database(settings.store())) {
      List<Recorded> journal = new Door(new Journal(database), settings.crops().keys()).journal();
      return settings.commissioned(output -> isTried(output, journal));
    } catch (StoreException e) {
      // Nobody knows what was tried, so nothing is switched; the daemon tells what ails the store.
      return settings;
    }
  }

  static boolean isTried(OutputSetting output, List<Recorded> journal) {
    return Lots.standing(journal).stream()
        .map(Recorded::entry)
        .anyMatch(
            entry ->
                entry instanceof OutputTried tried
                    && tried.room().equals(output.room())
                    && tried.output().equals(output.name())
                    && tried.place().equals(output.driver().place()));
  }
}
