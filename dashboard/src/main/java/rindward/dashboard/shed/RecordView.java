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
 * @param proofs what must be shown to protect heated rooms; empty where nothing real heats
 */
public record RecordView(
    @Nullable Instant copiedAt,
    @Nullable Long copyBytes,
    int schema,
    int entryVersion,
    int newerEntries,
    List<TriedView> tried,
    List<ProofView> proofs) {
  public RecordView {
    tried = List.copyOf(tried);
    proofs = List.copyOf(proofs);
  }

  /** An output that did what it should while somebody looked. */
  public record TriedView(String room, String output, Instant at, String by) {}

  /**
   * One thing that must be shown once a year.
   *
   * @param room where; null for the whole shed
   * @param what it shows, as the rest of a sentence
   * @param results each time it was shown, the newest first, with day, name and figures
   * @param warning what is missing or due, in one sentence; null while all is well
   */
  public record ProofView(
      @Nullable String room, String what, List<String> results, @Nullable String warning) {
    public ProofView {
      results = List.copyOf(results);
    }
  }
}
