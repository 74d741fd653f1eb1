package rindward.controller.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.LetRun;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.ProbeCalibrated;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.RoomAsked;
import rindward.controller.journal.Speaker;
import rindward.controller.journal.SwitchedByHand;
import rindward.controller.settings.Accepted;
import rindward.controller.settings.OwnFile;

/**
 * What people said that the rooms go by whatever becomes of the record: which outputs were tried,
 * what probes are off by, which range was asked for, what a hand has switched off. It stands in the
 * journal, and once more beside the settings last accepted, so that a database that is damaged,
 * gone or an older copy neither stops the heat nor switches on what somebody has switched off. For
 * any thread.
 */
public final class LastingWords {
  private static final Logger LOG = LoggerFactory.getLogger(LastingWords.class);
  private static final JsonMapper JSON = new JsonMapper();
  private static final String ENDING = ".words";

  private final @Nullable Path place;
  private List<Recorded> words;

  private LastingWords(@Nullable Path place, List<Recorded> words) {
    this.place = place;
    this.words = words;
  }

  /** Returns words that are kept nowhere; for a shed that is only simulated. */
  public static LastingWords unkept() {
    return new LastingWords(null, List.of());
  }

  /**
   * Reads what is kept beside what was last accepted of a settings file; nothing if it cannot be.
   */
  public static LastingWords beside(Path settingsFile) {
    Path place = Path.of(Accepted.placeOf(settingsFile) + ENDING);
    List<Recorded> words = new ArrayList<>();
    try {
      for (String line : Files.readAllLines(place, StandardCharsets.UTF_8)) {
        read(line).ifPresent(words::add);
      }
    } catch (NoSuchFileException e) {
      // Nothing was kept so far.
    } catch (IOException e) {
      LOG.error("What was said and lasts, {}, cannot be read: {}", place, e.toString());
    }
    return new LastingWords(place, List.copyOf(words));
  }

  /** Returns what lasts, in the order in which it was said. */
  public synchronized List<Recorded> words() {
    return words;
  }

  /**
   * Takes in what the journal says, and keeps what lasts of it.
   *
   * @param mayBe tells whether somebody may say what needs such a speaker; off always counts
   */
  public synchronized List<Recorded> hear(
      List<Recorded> journal, BiPredicate<String, Speaker> mayBe, Instant now) {
    Map<String, Recorded> last = new LinkedHashMap<>();
    List<Recorded> all = new ArrayList<>(words);
    journal.stream()
        .filter(recorded -> !about(recorded.entry()).isEmpty())
        .filter(recorded -> counts(recorded, mayBe))
        .forEach(all::add);
    all.sort(Comparator.comparing(Recorded::recordedAt));
    all.forEach(recorded -> last.put(about(recorded.entry()), recorded));
    last.values().removeIf(recorded -> isOver(recorded.entry(), now));
    List<Recorded> next = last.values().stream().map(LastingWords::unnumbered).toList();
    if (!next.equals(words)) {
      words = next;
      keep();
    }
    return words;
  }

  /** Of another journal its number would mean something else. */
  private static Recorded unnumbered(Recorded recorded) {
    return new Recorded(0, recorded.recordedAt(), recorded.by(), recorded.entry());
  }

  private static boolean counts(Recorded recorded, BiPredicate<String, Speaker> mayBe) {
    Entry entry = recorded.entry();
    return entry instanceof SwitchedByHand
        || entry instanceof LetRun
        || (EntryKinds.refusal(entry).isEmpty()
            && mayBe.test(recorded.by(), EntryKinds.of(entry).speaker()));
  }

  /** Of what is said of the same, the last word counts; empty for what does not last. */
  private static String about(Entry entry) {
    if (entry instanceof OutputTried tried) {
      return "tried " + tried.room() + "\n" + tried.output() + "\n" + tried.place();
    }
    if (entry instanceof ProbeCalibrated found) {
      return "probe " + found.probe() + "\n" + found.place();
    }
    if (entry instanceof RoomAsked asked) {
      return "room " + asked.room();
    }
    if (entry instanceof SwitchedByHand switched) {
      return "hand " + switched.room() + "\n" + switched.part();
    }
    return entry instanceof LetRun let ? "hand " + let.room() + "\n" + let.part() : "";
  }

  private static boolean isOver(Entry entry, Instant now) {
    return entry instanceof LetRun
        || (entry instanceof SwitchedByHand hand && (hand.on() || !hand.until().isAfter(now)));
  }

  private void keep() {
    if (place == null) {
      return;
    }
    StringBuilder text = new StringBuilder();
    words.forEach(recorded -> text.append(write(recorded)).append('\n'));
    try {
      OwnFile.write(place, text.toString());
    } catch (IOException e) {
      LOG.error("What was said and lasts cannot be kept as {}: {}", place, e.toString());
    }
  }

  private static String write(Recorded recorded) {
    try {
      return JSON.writeValueAsString(
          Map.of(
              "saidAt", recorded.recordedAt().toString(),
              "by", recorded.by(),
              "entry", EntryKinds.plain(recorded.entry())));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("an entry cannot be written: " + recorded, e);
    }
  }

  /** A line that cannot be read, or that a newer version wrote, says nothing; the others count. */
  private static Optional<Recorded> read(String line) {
    try {
      Map<?, ?> kept = JSON.readValue(line, Map.class);
      if (kept.get("saidAt") instanceof String at
          && kept.get("by") instanceof String by
          && kept.get("entry") instanceof Map<?, ?> entry) {
        return Optional.of(new Recorded(0, Instant.parse(at), by, EntryKinds.read(entry).entry()));
      }
    } catch (JsonProcessingException | DateTimeException | IllegalArgumentException e) {
      LOG.error("A line of what was said and lasts cannot be read: {}", e.toString());
    }
    return Optional.empty();
  }
}
