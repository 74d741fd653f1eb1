package rindward.dashboard.shed;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What of the shed is on record, beside what is measured: the copies of it, and who has seen its
 * outputs at work.
 *
 * @param copiedAt when the newest copy of everything was made; null while there is none
 * @param copyBytes how large it is; null while there is none
 * @param schema number of the database's form
 * @param entryVersion the newest version that this program knows of any kind of entry
 * @param newerEntries how many entries a newer version of this program wrote that this one cannot
 *     read
 * @param tried outputs that somebody stood beside as they ran, each with the last time
 */
public record RecordView(
    @Nullable Instant copiedAt,
    @Nullable Long copyBytes,
    int schema,
    int entryVersion,
    int newerEntries,
    List<TriedView> tried) {
  public RecordView {
    tried = List.copyOf(tried);
  }

  /** An output that did what it should while somebody looked. */
  public record TriedView(String room, String output, Instant at, String by) {}
}
