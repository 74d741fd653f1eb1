package rindward.controller.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import rindward.controller.lot.Entry;
import rindward.controller.lot.EntryCheck;
import rindward.controller.lot.Recorded;

/**
 * The one door in. Whatever a person says, from a page, a command, an import or a message, comes
 * through {@link #say}: checked against everything said before, kept at once, harmless when it is
 * sent twice, and refused when somebody else spoke of the same subject in between. For any thread,
 * and beside other processes.
 */
public final class Door {
  private final Journal journal;
  private final Set<String> crops;
  private final List<Recorded> heard = new ArrayList<>();

  /**
   * @param crops keys of the crop guide
   */
  public Door(Journal journal, Set<String> crops) {
    this.journal = journal;
    this.crops = crops;
  }

  /**
   * What became of it.
   *
   * @param recorded the entry as it stands in the journal; empty if it was refused
   * @param refusal why it was refused, in one sentence; empty if it was kept
   */
  public record Said(Optional<Recorded> recorded, Optional<String> refusal) {
    static Said kept(Recorded recorded) {
      return new Said(Optional.of(recorded), Optional.empty());
    }

    static Said refused(String sentence) {
      return new Said(Optional.empty(), Optional.of(sentence));
    }
  }

  /**
   * Says something.
   *
   * @param by who says it
   * @param request identifies this saying; sent again, it changes nothing
   * @param version the subject's last entry as the sender saw it; empty to speak regardless
   * @param now the time it is said
   * @throws StoreException when it could not be kept; the same request may be sent again
   */
  public synchronized Said say(
      Entry entry, String by, String request, OptionalLong version, Instant now) {
    listen();
    Optional<Recorded> again = journal.find(request).map(Door::recorded);
    if (again.isPresent()) {
      return Said.kept(again.get());
    }
    Optional<String> refusal = EntryCheck.refusal(entry, heard, crops, now);
    if (refusal.isPresent()) {
      return Said.refused(refusal.get());
    }
    AppendResult result =
        journal.append(
            request, entry.subject(), version, now.toEpochMilli(), by, EntryJson.write(entry));
    if (result instanceof AppendResult.Appended appended) {
      listen();
      return Said.kept(recorded(appended.entry()));
    }
    return Said.refused(
        "version was '"
            + version.orElse(0)
            + "' but somebody else has changed "
            + entry.subject()
            + " since: look at it again");
  }

  /** Returns everything said so far, by other processes too. */
  public synchronized List<Recorded> journal() {
    listen();
    return List.copyOf(heard);
  }

  private void listen() {
    long last = heard.isEmpty() ? 0 : heard.get(heard.size() - 1).id();
    journal.since(last, stored -> heard.add(recorded(stored)));
  }

  private static Recorded recorded(StoredEntry stored) {
    return new Recorded(
        stored.id(),
        Instant.ofEpochMilli(stored.atMillis()),
        stored.by(),
        EntryJson.read(stored.body()));
  }
}
