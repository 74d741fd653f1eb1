package rindward.controller.store.current;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.Tasting;
import rindward.controller.lot.Finished;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.store.Database;
import rindward.controller.store.EntryReader;
import rindward.controller.store.Journal;
import rindward.controller.store.StoreException;

/**
 * What control holds of the journal: everything said of lots that hold fruit or in which something
 * harmful was found, of the tastings that served them, and of all that is no lot. Lots and tastings
 * that are over are told once and remembered in the database; a word about one of them brings it
 * back. So ten seasons cost control no more memory than one. For any thread; reads the disk.
 */
public final class CurrentJournal {
  private static final Logger LOG = LoggerFactory.getLogger(CurrentJournal.class);

  /** A tasting serves a dozen lots, which are looked at one after the other. */
  private static final int SESSIONS_AT_HAND = 16;

  private final EntryReader reader;
  private final FinishedTable table;
  private final CropGuide crops;
  private final String basis;
  private final Map<String, List<Recorded>> held = new HashMap<>();
  private final Servings servings = new Servings();
  private final Set<String> again = new HashSet<>();
  private final List<FinishedSubject> over = new ArrayList<>();
  private final Set<String> places = new TreeSet<>();
  private List<Recorded> entries = List.of();
  private FinishedTable.Extent extent = FinishedTable.Extent.NOTHING;
  private long heard;
  private boolean hasBegun;

  /**
   * @param program which program it is: another one may tell otherwise
   */
  public CurrentJournal(Database database, CropGuide crops, String program) {
    this.reader = new EntryReader(new Journal(database));
    this.table = new FinishedTable(database);
    this.crops = crops;
    this.basis = program + ", guide " + crops.fingerprint();
  }

  /** Returns the number of the last thing said, whether or not it is held. */
  public long last() {
    return reader.last();
  }

  /** Returns everything said that is not over, in its order. */
  public synchronized List<Recorded> entries() {
    if (!hasBegun || !table.extent(basis).equals(extent)) {
      begin();
    }
    Map<String, List<Recorded>> news = new LinkedHashMap<>();
    long before = heard;
    reader.since(
        heard,
        recorded -> {
          news.computeIfAbsent(recorded.entry().subject(), s -> new ArrayList<>()).add(recorded);
          heard = recorded.id();
        });
    if (!news.isEmpty()) {
      news.forEach(this::hear);
      reviewAccuracies(news.values().stream().flatMap(List::stream), before);
    }
    if (entries.isEmpty()) {
      entries =
          held.values().stream()
              .flatMap(List::stream)
              .sorted(Comparator.comparingLong(Recorded::id))
              .toList();
    }
    return entries;
  }

  /** Returns the subjects of the sessions in which a lot was served. */
  synchronized Set<String> sessionsOf(String lot) {
    return Set.copyOf(servings.sessionsOf(lot));
  }

  /** Returns every place in which a lot lay that is over. */
  public synchronized Set<String> places() {
    return Set.copyOf(places);
  }

  /**
   * Lets go of what is over by now.
   *
   * @param told what {@link #entries()} returned; nothing is let go of if more was said since
   * @param lots as it tells them
   */
  public synchronized void settle(List<Recorded> told, Lots lots) {
    if (told != entries) {
      return;
    }
    List.copyOf(held.keySet()).stream()
        .filter(subject -> Finished.isOver(about(subject), lots.find(subject), crops))
        .forEach(subject -> letGo(subject, lots.find(subject)));
    List.copyOf(held.keySet()).stream()
        .filter(this::isOverSession)
        .forEach(session -> letGo(session, Optional.empty()));
    if (!over.isEmpty() || !again.isEmpty()) {
      remember();
    }
  }

  private void letGo(String subject, Optional<Lot> lot) {
    held.remove(subject);
    entries = List.of();
    FinishedSubject finished = FinishedSubject.of(subject, lot, crops);
    over.add(finished);
    places.addAll(finished.places());
  }

  /** Starts from what is remembered, or anew where nothing is or something was deleted. */
  private void begin() {
    long last = reader.last();
    long upTo = remembered(last);
    List<String> unfinished = table.unfinished();
    List<String> sessions = unfinished.stream().filter(CurrentJournal::isSession).toList();
    sessions.forEach(session -> noteServed(session, reader.about(session)));
    Map<String, List<Recorded>> atHand = new AtHand();
    unfinished.stream()
        .filter(subject -> !isSession(subject))
        .forEach(subject -> look(subject, atHand));
    for (String session : sessions) {
      held.put(session, reader.about(session));
      if (isOverSession(session)) {
        letGo(session, Optional.empty());
      }
    }
    if (upTo > 0) {
      List<String> spoken = reader.subjectsSince(upTo);
      spoken.forEach(this::bringBack);
      reviewAccuracies(spoken.stream().flatMap(subject -> about(subject).stream()), upTo);
    }
    heard = last;
    hasBegun = true;
    remember();
  }

  /** Returns up to which entry everything is remembered; 0 if it has to be told anew. */
  private long remembered(long last) {
    held.clear();
    servings.clear();
    again.clear();
    over.clear();
    places.clear();
    entries = List.of();
    extent = table.extent(basis);
    if (extent.upTo() == 0 || extent.upTo() > last) {
      extent = FinishedTable.Extent.NOTHING;
      keep(table::forget);
    } else {
      table.eachServing(servings::add);
      servings.saved();
      places.addAll(table.places());
    }
    return extent.upTo();
  }

  /** Sessions that many lots of a row were served in. */
  private static final class AtHand extends LinkedHashMap<String, List<Recorded>> {
    private static final long serialVersionUID = 1;

    AtHand() {
      super(SESSIONS_AT_HAND, 0.75f, true);
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<String, List<Recorded>> eldest) {
      return size() > SESSIONS_AT_HAND;
    }
  }

  /** Holds a subject, unless it is over. */
  private void look(String subject, Map<String, List<Recorded>> atHand) {
    List<Recorded> about = reader.about(subject);
    List<Recorded> all = new ArrayList<>(about);
    for (String session : servings.sessionsOf(subject)) {
      all.addAll(atHand.computeIfAbsent(session, reader::about));
    }
    all.sort(Comparator.comparingLong(Recorded::id));
    Optional<Lot> lot = Lots.of(all).find(subject);
    if (Finished.isOver(about, lot, crops)) {
      letGo(subject, lot);
    } else {
      held.put(subject, about);
    }
  }

  private void hear(String subject, List<Recorded> news) {
    List<Recorded> known = held.get(subject);
    if (known == null) {
      bringBack(subject);
      return;
    }
    long last = known.isEmpty() ? 0 : known.get(known.size() - 1).id();
    news.stream().filter(recorded -> recorded.id() > last).forEach(known::add);
    entries = List.of();
    if (isSession(subject)) {
      noteServed(subject, news);
      servings.lotsIn(subject).forEach(this::bringBackLot);
    }
  }

  /** Holds a subject again, with all that a lot of it needs to be told. */
  private void bringBack(String subject) {
    hold(subject);
    if (isSession(subject)) {
      noteServed(subject, about(subject));
      servings.lotsIn(subject).forEach(this::bringBackLot);
    } else {
      servings.sessionsOf(subject).forEach(this::hold);
    }
  }

  private void bringBackLot(String lot) {
    hold(lot);
    servings.sessionsOf(lot).forEach(this::hold);
  }

  private void hold(String subject) {
    if (!held.containsKey(subject)) {
      held.put(subject, reader.about(subject));
      again.add(subject);
      entries = List.of();
    }
  }

  private List<Recorded> about(String subject) {
    return held.getOrDefault(subject, List.of());
  }

  /** A tasting is over when all lots are that it served, and no newer version spoke of it. */
  private boolean isOverSession(String subject) {
    return isSession(subject)
        && about(subject).stream()
            .allMatch(
                recorded ->
                    recorded.entry() instanceof Tasting || recorded.entry() instanceof Corrected)
        && servings.lotsIn(subject).stream().noneMatch(held::containsKey);
  }

  private void noteServed(String session, List<Recorded> about) {
    List<String> lots =
        about.stream()
            .map(Recorded::entry)
            .flatMap(CurrentJournal::plan)
            .flatMap(plan -> plan.samples().stream())
            .map(Served::lot)
            .distinct()
            .toList();
    lots.forEach(lot -> servings.add(lot, session));
  }

  private static Stream<SessionPlanned> plan(Entry entry) {
    Entry said = entry instanceof Corrected corrected ? corrected.instead() : entry;
    return said instanceof SessionPlanned plan ? Stream.of(plan) : Stream.empty();
  }

  /** What lots teach depends on how good the probes were. */
  private void reviewAccuracies(Stream<Recorded> said, long after) {
    boolean isNew =
        said.filter(recorded -> recorded.id() > after)
            .map(Recorded::entry)
            .map(entry -> entry instanceof Corrected corrected ? corrected.instead() : entry)
            .anyMatch(AccuracyStated.class::isInstance);
    if (isNew) {
      keep(table::forgetLessons);
    }
  }

  private void remember() {
    keep(
        () -> {
          table.remember(over, again, servings.unsaved(), heard, basis);
          over.clear();
          again.clear();
          servings.saved();
          extent = table.extent(basis);
        });
  }

  /** What cannot be remembered is told anew at the next start: no reason not to run the rooms. */
  private static void keep(Runnable writing) {
    try {
      writing.run();
    } catch (StoreException e) {
      LOG.debug("What is over is not remembered: {}", e.getMessage());
    }
  }

  private static boolean isSession(String subject) {
    return subject.startsWith("session ");
  }
}
