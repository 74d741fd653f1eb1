package rindward.controller.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.NewerEntry;

/**
 * Entries as JSON, as they stand on disks for ten years. What stands in it is declared with each
 * kind of entry; here is only the notation.
 */
public final class EntryJson {
  private static final ObjectReader READER = JsonMapper.builder().build().readerFor(Map.class);
  private static final ObjectWriter WRITER = JsonMapper.builder().build().writer();

  private EntryJson() {}

  static String write(Entry entry) {
    if (entry instanceof NewerEntry newer) {
      return newer.body();
    }
    try {
      return WRITER.writeValueAsString(EntryKinds.plain(entry));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("an entry cannot be written: " + entry, e);
    }
  }

  /**
   * What was read.
   *
   * @param entry as far as this version understands it; a {@link NewerEntry} if it does not
   * @param unread the whole of it, if a part of it was not understood
   */
  record Read(Entry entry, Optional<NewerEntry> unread) {}

  /** Reads an entry back; what a newer version wrote is no failure. */
  static Read read(StoredEntry stored) {
    return read(stored.subject(), Instant.ofEpochMilli(stored.atMillis()), stored.body());
  }

  private static Read read(String subject, Instant saidAt, String body) {
    Map<?, ?> plain = Map.of();
    try {
      plain = READER.readValue(body);
      if (plain == null) { // The word null is JSON, too.
        plain = Map.of();
      }
      EntryKinds.Read read = EntryKinds.read(plain);
      return read.isWhole()
          ? new Read(read.entry(), Optional.empty())
          : new Read(read.entry(), Optional.of(NewerEntry.of(subject, saidAt, body, plain)));
    } catch (JsonProcessingException | RuntimeException e) {
      // Whatever it is: one row that cannot be read must not keep everybody from hearing the next.
      return new Read(NewerEntry.of(subject, saidAt, body, plain), Optional.empty());
    }
  }

  /**
   * Returns what was taken out of another journal byte for byte, to be said here: a plain entry if
   * this version understands all of it.
   */
  public static Entry taken(String subject, Instant saidAt, String body) {
    Read read = read(subject, saidAt, body);
    return read.unread().<Entry>map(unread -> unread).orElse(read.entry());
  }
}
