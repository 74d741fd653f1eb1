package rindward.controller.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Map;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;

/**
 * Entries as JSON, as they stand on disks for ten years. What stands in it is declared with each
 * kind of entry; here is only the notation.
 */
final class EntryJson {
  private static final ObjectReader READER = JsonMapper.builder().build().readerFor(Map.class);
  private static final ObjectWriter WRITER = JsonMapper.builder().build().writer();

  private EntryJson() {}

  static String write(Entry entry) {
    try {
      return WRITER.writeValueAsString(EntryKinds.plain(entry));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("an entry cannot be written: " + entry, e);
    }
  }

  /**
   * Reads an entry back.
   *
   * @throws IllegalArgumentException when a newer version of this program wrote it
   */
  static Entry read(String body) {
    try {
      Map<?, ?> plain = READER.readValue(body);
      return EntryKinds.read(plain).entry();
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("an entry of the journal cannot be read: " + body, e);
    }
  }
}
