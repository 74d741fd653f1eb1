package rindward.controller.command.shed;

import java.nio.file.Files;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.ProbeCalibrated;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lots;
import rindward.controller.settings.SafetyProofs;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.store.StoreException;
import rindward.hardware.wired.Offset;

/**
 * What people have found out about real parts: which outputs somebody has tried, and what probes
 * are off by. A part that was moved counts as new.
 */
public final class TriedParts {
  private TriedParts() {}

  /**
   * Returns the settings with every room run whose outputs were all tried, and probes set right.
   */
  public static Settings in(Settings settings) {
    if (settings.isSimulated() || !Files.exists(settings.store())) {
      return settings;
    }
    try (Database database = new Database(settings.store())) {
      List<Recorded> journal = new EntryService(new Journal(database), settings.crops()).journal();
      return settings
          .commissioned(output -> isTried(output, journal))
          .calibrated(probe -> calibration(probe, journal));
    } catch (StoreException e) {
      // Nobody knows what was tried, so nothing is switched; the daemon tells what ails the store.
      return settings;
    }
  }

  /**
   * Returns a sentence for everything that protects the shed and was not shown, or not for a year;
   * nothing where no record was begun, for then nothing could be.
   */
  static List<String> unproven(Settings settings, Instant now) {
    if (settings.isSimulated() || !Files.exists(settings.store())) {
      return List.of();
    }
    try (Database database = new Database(settings.store())) {
      return SafetyProofs.warnings(
          settings,
          Lots.standing(new EntryService(new Journal(database), settings.crops()).journal()),
          now);
    } catch (StoreException e) {
      return List.of("What was shown of the shed's protection cannot be read: " + e.getMessage());
    }
  }

  /** Returns what the last comparison found a probe to be off by. */
  static Optional<Offset> calibration(ProbeSetting probe, List<Recorded> journal) {
    return Lots.standing(journal).stream()
        .map(Recorded::entry)
        .filter(ProbeCalibrated.class::isInstance)
        .map(ProbeCalibrated.class::cast)
        .filter(c -> c.probe().equals(probe.name()) && c.place().equals(probe.driver().place()))
        .reduce((earlier, later) -> later)
        .map(
            c ->
                new Offset(
                    c.temperatureMilliC(), c.humidityMilliPct(), c.humidityGainMillionths()));
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
