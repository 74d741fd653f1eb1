package rindward.controller.store.current;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.Recorded;
import rindward.controller.judge.JournalView;
import rindward.controller.judge.JudgedLots;
import rindward.controller.ledger.History;
import rindward.controller.lot.Lot;
import rindward.controller.store.Database;
import rindward.controller.store.EntryReader;
import rindward.controller.store.Journal;
import rindward.controller.store.StoreException;
import rindward.controller.variety.Grown;
import rindward.controller.variety.LotLesson;
import rindward.controller.variety.VarietyName;

/**
 * What lots that are over teach about the next of their variety. Each is told once, from its
 * entries and its air, when a lot of its variety is judged that holds fruit; then it is remembered.
 * For any thread; reads the disk.
 */
public final class FinishedLots implements Function<VarietyName, Map<String, LotLesson>> {
  private static final Logger LOG = LoggerFactory.getLogger(FinishedLots.class);
  private static final JsonMapper JSON = new JsonMapper();

  private final FinishedTable table;
  private final EntryReader reader;
  private final CropGuide crops;
  private final long holdMillis;
  private final Function<String, History> historyOf;
  private final CurrentJournal current;
  private final Supplier<Instant> now;

  /**
   * @param holdMillis how long a sample holds at most
   * @param historyOf what was measured in a place
   * @param current what is not over, the accuracies of probes among it
   */
  public FinishedLots(
      Database database,
      CropGuide crops,
      long holdMillis,
      Function<String, History> historyOf,
      CurrentJournal current,
      Supplier<Instant> now) {
    this.table = new FinishedTable(database);
    this.reader = new EntryReader(new Journal(database));
    this.crops = crops;
    this.holdMillis = holdMillis;
    this.historyOf = historyOf;
    this.current = current;
    this.now = now;
  }

  @Override
  public Map<String, LotLesson> apply(VarietyName name) {
    Map<String, LotLesson> lessons = new HashMap<>();
    List<String> untold = new ArrayList<>();
    table
        .lessons(name.crop(), name.variety())
        .forEach(
            (lot, taught) -> {
              Optional<LotLesson> known = Optional.ofNullable(taught).flatMap(FinishedLots::read);
              known.ifPresentOrElse(lesson -> lessons.put(lot, lesson), () -> untold.add(lot));
            });
    Map<String, String> forGood = new HashMap<>();
    Instant hour = now.get().truncatedTo(ChronoUnit.HOURS);
    for (String code : untold) {
      JudgedLots judged = judged(code, hour);
      judged
          .told()
          .lots()
          .find(code)
          .flatMap(judged::grown)
          .ifPresent(
              grown -> {
                LotLesson lesson = LotLesson.of(grown, judged.tasted());
                lessons.put(code, lesson);
                if (isSettled(grown, hour)) {
                  forGood.put(code, write(lesson));
                }
              });
    }
    remember(forGood);
    return lessons;
  }

  /** Its own entries, those of its tastings, and how good the probes were: all that tells it. */
  private JudgedLots judged(String code, Instant hour) {
    List<String> subjects = new ArrayList<>(current.sessionsOf(code));
    subjects.add(code);
    List<Recorded> told = new ArrayList<>(reader.about(subjects));
    current.entries().stream()
        .filter(recorded -> recorded.entry() instanceof AccuracyStated)
        .forEach(told::add);
    told.sort(Comparator.comparingLong(Recorded::id));
    return JudgedLots.of(crops, holdMillis, historyOf, JournalView.of(told), hour);
  }

  /**
   * Tells whether time changes nothing more: its air is counted to the end, and its cure is known.
   */
  private static boolean isSettled(Grown grown, Instant hour) {
    Lot lot = grown.lot();
    return lot.emptied().filter(gone -> !gone.isAfter(hour)).isPresent()
        && grown.lived().cureEnd().isPresent();
  }

  private void remember(Map<String, String> lessons) {
    if (lessons.isEmpty()) {
      return;
    }
    try {
      table.teach(lessons);
    } catch (StoreException e) {
      LOG.debug("What lots have taught is not remembered: {}", e.getMessage());
    }
  }

  private static Optional<LotLesson> read(String taught) {
    try {
      return Optional.of(JSON.readValue(taught, LotLesson.class));
    } catch (JsonProcessingException e) {
      return Optional.empty(); // It is told anew.
    }
  }

  private static String write(LotLesson lesson) {
    try {
      return JSON.writeValueAsString(lesson);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("what a lot taught cannot be written: " + lesson, e);
    }
  }
}
