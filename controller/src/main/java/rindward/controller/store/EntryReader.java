package rindward.controller.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import rindward.controller.journal.Recorded;

/**
 * The journal as the entries that stand in it. What a newer version said comes as a {@link
 * rindward.controller.journal.NewerEntry}; behind what could be read of it, under the same id, if a
 * part could. For any thread, and beside other processes; holds nothing.
 */
public final class EntryReader {
  private final Journal journal;
  private volatile Instant recordedLast = Instant.EPOCH;

  public EntryReader(Journal journal) {
    this.journal = journal;
  }

  /** Returns the number of the last thing said; 0 for none. */
  public long last() {
    return journal.last();
  }

  /** Returns which subjects were spoken of after {@code id}. */
  public List<String> subjectsSince(long id) {
    return journal.subjectsSince(id);
  }

  /** Hands over everything said after {@code id}, in its order. */
  public void since(long id, Consumer<Recorded> visit) {
    journal.since(id, stored -> read(stored, visit));
  }

  /** Returns everything said about a subject, in its order, without reading the rest. */
  public List<Recorded> about(String subject) {
    List<Recorded> about = new ArrayList<>();
    journal.about(subject).forEach(stored -> read(stored, about::add));
    return about;
  }

  /** Returns everything said about some subjects, in its order, without reading the rest. */
  public List<Recorded> about(Collection<String> subjects) {
    return subjects.stream()
        .distinct()
        .flatMap(subject -> about(subject).stream())
        .sorted(Comparator.comparingLong(Recorded::id))
        .toList();
  }

  private void read(StoredEntry stored, Consumer<Recorded> visit) {
    EntryJson.Read read = EntryJson.read(stored);
    Recorded recorded = recorded(stored, read);
    visit.accept(recorded);
    read.unread()
        .ifPresent(
            unread ->
                visit.accept(
                    new Recorded(recorded.id(), recorded.recordedAt(), recorded.by(), unread)));
  }

  /** Returns what this version understands of an entry. */
  Recorded recorded(StoredEntry stored) {
    return recorded(stored, EntryJson.read(stored));
  }

  /** Who spoke, and when several things were said in one breath, is held once for all of them. */
  private Recorded recorded(StoredEntry stored, EntryJson.Read read) {
    Instant recordedAt = recordedLast;
    if (recordedAt.toEpochMilli() != stored.atMillis()) {
      recordedAt = Instant.ofEpochMilli(stored.atMillis());
      recordedLast = recordedAt;
    }
    return new Recorded(stored.id(), recordedAt, stored.by().intern(), read.entry());
  }
}
