package rindward.controller.store;

import org.jspecify.annotations.Nullable;

/** What became of an entry offered to the {@link Journal}. */
public sealed interface AppendResult {
  /**
   * It is on the disk.
   *
   * @param entry as kept; for a retry, what the first attempt left
   * @param retried whether the request had been kept before
   */
  record Appended(StoredEntry entry, boolean retried) implements AppendResult {}

  /**
   * Nothing was kept, for the subject is not as the sender saw it.
   *
   * @param last the subject's newest entry, which the sender has not seen; null when it has none
   */
  record Conflict(@Nullable StoredEntry last) implements AppendResult {}
}
