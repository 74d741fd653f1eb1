package rindward.controller.command.shed;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.daemon.EntryAuthority;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.ProbeCalibrated;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lots;
import rindward.controller.settings.SafetyProofs;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.settings.TrialNotes;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.store.LastingWords;
import rindward.controller.store.SignInStore;
import rindward.controller.store.StoreException;
import rindward.hardware.wired.Offset;

/**
 * What people have found out about real parts: which outputs somebody has tried, and what probes
 * are off by. A part that was moved counts as new.
 */
public final class TriedParts {
  private static final Logger LOG = LoggerFactory.getLogger(TriedParts.class);

  private TriedParts() {}

  /**
   * Returns the settings with every room run whose outputs were all tried, and probes set right, by
   * what the journal says.
   */
  public static Settings in(Settings settings) {
    return in(settings, null, LastingWords.unkept());
  }

  /**
   * The same for control itself, which believes of no output that it ran unless it has noted that
   * itself; a journal from before there were such notes is believed once.
   *
   * @param notes control's own; null to go by the journal
   * @param lasting what was said and counts also when the journal cannot be read or is gone
   */
  public static Settings in(Settings settings, @Nullable TrialNotes notes, LastingWords lasting) {
    if (settings.isSimulated()) {
      return settings;
    }
    try {
      return of(settings, notes, lasting);
    } catch (IOException e) {
      LOG.error("Nothing is switched: {}", e.getMessage());
      return settings;
    }
  }

  private static Settings of(Settings settings, @Nullable TrialNotes notes, LastingWords lasting)
      throws IOException {
    List<Recorded> said = new ArrayList<>(lasting.words());
    Optional<List<Recorded>> journal =
        Files.exists(settings.store()) ? journal(settings) : Optional.of(List.of());
    if (notes != null && !notes.areThere() && journal.isPresent()) {
      notes.add(trials(journal.get()));
    }
    journal.ifPresent(said::addAll);
    said.sort(Comparator.comparing(Recorded::recordedAt));
    return settings
        .commissioned(output -> isTried(output, said) && isNoted(output, notes))
        .calibrated(probe -> calibration(probe, said));
  }

  /** Nothing when it cannot be read: the daemon tells what ails the store. */
  private static Optional<List<Recorded>> journal(Settings settings) {
    try (Database database = new Database(settings.store())) {
      EntryAuthority mayBe = new EntryAuthority(new SignInStore(database), System::nanoTime);
      return Optional.of(
          new EntryService(new Journal(database), settings.crops())
              .about(subjects(settings)).stream().filter(said -> counts(said, mayBe)).toList());
    } catch (StoreException e) {
      LOG.error("What was tried is known only from beside the settings: {}", e.getMessage());
      return Optional.empty();
    }
  }

  /** A journal of ten years is not read for a few words about parts. */
  private static List<String> subjects(Settings settings) {
    return Stream.of(
            settings.outputs().stream().map(OutputSetting::room),
            settings.safety().asOutput().stream().map(OutputSetting::room),
            settings.probes().stream().map(ProbeSetting::name))
        .flatMap(subject -> subject)
        .distinct()
        .toList();
  }

  /** The journal is not trusted with a pin: bounds and speaker are looked at anew. */
  private static boolean counts(Recorded said, EntryAuthority mayBe) {
    Entry entry = said.entry();
    return !(entry instanceof OutputTried || entry instanceof ProbeCalibrated)
        || (EntryKinds.refusal(entry).isEmpty()
            && mayBe.test(said.by(), EntryKinds.of(entry).speaker()));
  }

  private static boolean isNoted(OutputSetting output, @Nullable TrialNotes notes) {
    try {
      return notes == null || notes.has(output);
    } catch (IOException e) {
      LOG.error("Output {} stays off: {}", output.name(), e.getMessage());
      return false;
    }
  }

  private static List<OutputTried> trials(List<Recorded> journal) {
    return Lots.standing(journal).stream()
        .map(Recorded::entry)
        .filter(OutputTried.class::isInstance)
        .map(OutputTried.class::cast)
        .toList();
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
