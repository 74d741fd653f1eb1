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
 * @param tried outputs that somebody stood beside as they ran, each with the last time
 */
public record RecordView(
    @Nullable Instant copiedAt, @Nullable Long copyBytes, List<TriedView> tried) {
  public RecordView {
    tried = List.copyOf(tried);
  }

  /** An output that did what it should while somebody looked. */
  public record TriedView(String room, String output, Instant at, String by) {}
}
