package rindward.controller.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.lot.EntryCheck;
import rindward.controller.store.Journal.Unwritten;

/**
 * The one door in. Whatever a person says, from a page, a command, an import or a message, comes
 * through {@link #say}: checked against everything said before, kept at once, harmless when it is
 * sent twice, and refused when somebody else spoke of the same subject in between. For any thread,
 * and beside other processes.
 */
public final class EntryService {
  /** Entries that are only being checked have ids above all that are kept. */
  private static final long UNKEPT = 1L << 62;

  private final Journal journal;
  private final EntryReader reader;
  private final CropGuide crops;

  /** Everything said, once somebody has asked for all of it; nothing before. */
  private final List<Recorded> heard = new ArrayList<>();

  private final Map<String, List<Recorded>> bySubject = new HashMap<>();
  private boolean isListening;

  /** What was handed over last: with ten years in it, a copy for each who asks is dear. */
  private List<Recorded> handedOver = List.of();

  /**
   * @param crops the types that may be spoken of, and what is harmful in them
   */
  public EntryService(Journal journal, CropGuide crops) {
    this.journal = journal;
    this.reader = new EntryReader(journal);
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
    Optional<Recorded> again = journal.find(request).map(reader::recorded);
    if (again.isPresent()) {
      return Said.kept(again.get());
    }
    Optional<String> refusal = EntryCheck.refusal(entry, about(entry), crops, now);
    if (refusal.isPresent()) {
      return Said.refused(refusal.get());
    }
    AppendResult result =
        journal.append(
            request, entry.subject(), version, now.toEpochMilli(), by, EntryJson.write(entry));
    if (result instanceof AppendResult.Appended appended) {
      return Said.kept(reader.recorded(appended.entry()));
    }
    return Said.refused(changedSince(version.orElse(0), entry.subject()));
  }

  private static String changedSince(long version, String subject) {
    return "somebody else has changed "
        + subject
        + " since you looked (then at version '"
        + version
        + "'): look at it again";
  }

  /**
   * One of several entries that was refused.
   *
   * @param index its place among those that were said, from 0
   * @param sentence why
   * @param isStale whether it could be said again after a look at what has changed since
   */
  public record Refused(int index, String sentence, boolean isStale) {
    Refused(int index, String sentence) {
      this(index, sentence, false);
    }
  }

  /**
   * Says several things in one breath: all are kept, or none. They are checked in their order, each
   * beside those before it.
   *
   * @param request identifies this saying; sent again, it changes nothing
   * @return every refusal; empty if all were kept
   * @throws StoreException when they could not be kept; the same request may be sent again
   */
  public List<Refused> sayAll(
      List<? extends Entry> entries, String by, String request, Instant now) {
    return sayAll(entries, by, request, Map.of(), now);
  }

  /**
   * The same, unless somebody else spoke of one of the subjects in between.
   *
   * @param seen each subject's last entry as the sender saw it; one that is missing may have
   *     changed
   */
  public synchronized List<Refused> sayAll(
      List<? extends Entry> entries,
      String by,
      String request,
      Map<String, Long> seen,
      Instant now) {
    if (journal.find(request + "/0").isPresent()) {
      return List.of();
    }
    List<Refused> refusals = refusals(entries, now);
    if (!refusals.isEmpty()) {
      return refusals;
    }
    Optional<String> changed =
        journal.appendAll(
            request,
            entries.stream().map(e -> new Unwritten(e.subject(), EntryJson.write(e))).toList(),
            seen,
            now.toEpochMilli(),
            by);
    return changed.map(subject -> stale(entries, seen, subject)).stream().toList();
  }

  /** Returns what {@link #sayAll} kept under a request, in its order; empty if it kept nothing. */
  public synchronized List<Recorded> kept(String request) {
    List<Recorded> kept = new ArrayList<>();
    for (int i = 0; ; i++) {
      Optional<StoredEntry> stored = journal.find(request + "/" + i);
      if (stored.isEmpty()) {
        return kept;
      }
      kept.add(reader.recorded(stored.get()));
    }
  }

  private static Refused stale(
      List<? extends Entry> entries, Map<String, Long> seen, String subject) {
    int index = entries.stream().map(Entry::subject).toList().indexOf(subject);
    return new Refused(index, changedSince(seen.getOrDefault(subject, 0L), subject), true);
  }

  /**
   * Returns what would be refused if these things were said in their order, in that order; without
   * the refused ones the others could be said.
   */
  public synchronized List<Refused> refusals(List<? extends Entry> entries, Instant now) {
    List<Refused> refusals = new ArrayList<>();
    Map<String, List<Recorded>> after = new HashMap<>();
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      List<Recorded> about =
          after.computeIfAbsent(entry.subject(), s -> new ArrayList<>(about(entry)));
      Optional<String> refusal = EntryCheck.refusal(entry, about, crops, now);
      if (refusal.isPresent()) {
        refusals.add(new Refused(i, refusal.get()));
      } else {
        about.add(new Recorded(UNKEPT + i, now, "", entry));
      }
    }
    return refusals;
  }

  /** Returns the number of the last thing said, by other processes too; 0 for none. */
  public long last() {
    return journal.last();
  }

  /**
   * Returns everything said so far, by other processes too. What a newer version said stands in it
   * as a {@link rindward.controller.journal.NewerEntry}; behind what could be read of it, under the
   * same id, if a part could.
   */
  public synchronized List<Recorded> journal() {
    listen();
    if (handedOver.size() < heard.size()) {
      handedOver = List.copyOf(heard);
    }
    return handedOver;
  }

  /** Returns everything said about some subjects, in its order, without reading the rest. */
  public List<Recorded> about(List<String> subjects) {
    return reader.about(subjects);
  }

  private void listen() {
    isListening = true;
    reader.since(heard.isEmpty() ? 0 : heard.get(heard.size() - 1).id(), this::hear);
  }

  private void hear(Recorded recorded) {
    heard.add(recorded);
    bySubject.computeIfAbsent(recorded.entry().subject(), s -> new ArrayList<>()).add(recorded);
  }

  /**
   * A plan to taste is about lots too, and these are told by everything. Of anything else its own
   * subject is read; who holds the whole journal need not read it again.
   */
  private List<Recorded> about(Entry entry) {
    if (entry instanceof SessionPlanned) {
      listen();
      return heard;
    }
    if (isListening) {
      listen();
      return bySubject.getOrDefault(entry.subject(), List.of());
    }
    return reader.about(entry.subject());
  }
}
