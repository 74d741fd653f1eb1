package rindward.controller.desk;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Weighed;
import rindward.controller.judge.JournalView;
import rindward.controller.judge.JudgedLots;
import rindward.controller.judge.LotJudge;
import rindward.controller.judge.Misfits;
import rindward.controller.ledger.History;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Warning;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.room.Room;
import rindward.controller.store.EntryService;
import rindward.controller.store.StoreException;
import rindward.dashboard.lots.LotChange;
import rindward.dashboard.lots.LotLine;
import rindward.dashboard.lots.LotRefused;
import rindward.dashboard.lots.LotView;
import rindward.dashboard.lots.LotsDesk;
import rindward.dashboard.lots.LotsView;
import rindward.dashboard.lots.SaidView;
import rindward.dashboard.rooms.ClimateView;

/** The lots and lot pages: what there is and what to do with it, and all that is said of it. */
public final class LotPages implements LotsDesk {
  private static final Logger LOG = LoggerFactory.getLogger(LotPages.class);

  private final ZoneId zone;
  private final LotJudge judge;
  private final Misfits misfits;
  private final Executor later;
  private final LotLines lines;
  private final LotChoices choices;
  private final LotDetail detail;
  private final LotAir air;
  private final LotSaying saying;
  private final InstantSource clock;

  /**
   * @param holdMillis how long a sample holds at most
   * @param judge says what every lot is
   * @param historyOf what was measured in a place; empty for a place without probes
   * @param later adds up what nobody waits for
   */
  public LotPages(
      List<Room> rooms,
      ZoneId zone,
      CropGuide crops,
      long holdMillis,
      EntryService door,
      LotJudge judge,
      Function<String, History> historyOf,
      Executor later,
      InstantSource clock) {
    this.zone = zone;
    this.judge = judge;
    this.misfits = new Misfits(rooms.stream().map(Room::surroundings).toList());
    this.later = later;
    this.lines = new LotLines(crops);
    this.choices = new LotChoices(rooms, crops);
    this.detail = new LotDetail(new HashSet<>(choices.roomNames()), zone.getId());
    this.air = new LotAir(zone.getId(), holdMillis, historyOf);
    this.saying = new LotSaying(door, crops, zone);
    this.clock = clock;
  }

  @Override
  public LotsView lots(boolean all, int from, int size) {
    JudgedLots judged = judged();
    JournalView now = judged.told();
    Instant at = now();
    Map<String, Integer> ranks = ranks(judged);
    List<Lot> shown = inOrder(now, ranks).filter(lot -> all || lot.fruits().sound() > 0).toList();
    return new LotsView(
        at,
        zone.getId(),
        shown.size(),
        shown.stream().skip(from).limit(size).map(lot -> line(lot, judged, ranks, at)).toList(),
        choices.planned(now.lots()),
        choices.crops(),
        choices.places(now.lots()),
        choices.roomNames(),
        LotChoices.freeCodes(now.lots()),
        LotChoices.words());
  }

  @Override
  public Optional<LotView> lot(String code) {
    JudgedLots judged = judged();
    Instant at = now();
    return find(judged, code)
        .map(
            lot -> {
              Integer rank = ranks(judged).get(lot.code());
              LotLine line = lines.line(lot, judged.offer(lot), judged.asOf(lot), rank, at);
              return detail.view(lot, line, judged, at);
            });
  }

  @Override
  public Optional<ClimateView> air(String code, Instant from, Instant to, int slots) {
    JudgedLots judged = judged();
    return find(judged, code).map(lot -> air.view(lot, judged.grown(lot), from, to, slots));
  }

  @Override
  public SaidView say(String kind, List<String> codes, Map<String, String> fields, LotChange change)
      throws LotRefused {
    Instant now = now();
    JournalView before = told();
    Instant at = change.at() == null ? now : change.at();
    List<Entry> entries =
        change.isOwner()
            ? saying.byOwner(kind, codes, fields, at)
            : saying.entries(kind, codes, fields, at);
    List<Recorded> kept = saying.say(entries, change, now);
    return said(kept.stream().map(Recorded::id).toList(), entries, warnings(before, entries));
  }

  @Override
  public SaidView correct(long entry, Map<String, String> fields, LotChange change)
      throws LotRefused {
    if (saying.before(change).isEmpty()) {
      saying.say(List.of(saying.correction(entry, fields)), change, now());
    }
    return said(saying.before(change));
  }

  @Override
  public SaidView withdraw(List<Long> entries, LotChange change) throws LotRefused {
    if (saying.before(change).isEmpty()) {
      saying.say(saying.withdrawals(entries, now()), change, now());
    }
    return said(saying.before(change));
  }

  @Override
  public Instant now() {
    return clock.instant();
  }

  /** Returns the farm's time zone, as its IANA name. */
  String zone() {
    return zone.getId();
  }

  /** Returns what may be eaten now, the first first. */
  List<Offer> toEat() {
    return judged().toEat();
  }

  /** Returns every lot and variety as they stand. */
  JudgedLots judged() {
    return judge.lately(now(), this::later);
  }

  /** Adds up what the first look at a page would have to wait for. */
  public void prepare() {
    var unused = toEat();
  }

  /** Forgets everything remembered; the next answers are the same, and slower. */
  public void forget() {
    judge.forget();
  }

  /** Returns everything said so far. */
  JournalView told() {
    return judge.told();
  }

  /** What fails here is tried again by whoever looks next. */
  private void later(Runnable work) {
    later.execute(
        () -> {
          try {
            work.run();
          } catch (StoreException e) {
            LOG.debug("the lots are added up at the next look", e);
          }
        });
  }

  private static Optional<Lot> find(JudgedLots judged, String code) {
    return judged.told().lots().find(code.toUpperCase(Locale.ROOT));
  }

  /** What is to be eaten first comes first, then what has sound fruits, then the rest. */
  private static Stream<Lot> inOrder(JournalView told, Map<String, Integer> ranks) {
    return told.lots().all().stream()
        .sorted(
            Comparator.comparingInt((Lot lot) -> ranks.getOrDefault(lot.code(), Integer.MAX_VALUE))
                .thenComparing(lot -> lot.fruits().sound() <= 0)
                .thenComparing(Comparator.comparing(Lot::harvestedAt).reversed())
                .thenComparing(Lot::code));
  }

  /** A lot without a fruit needs no verdict in a list. */
  private LotLine line(Lot lot, JudgedLots judged, Map<String, Integer> ranks, Instant now) {
    Optional<Offer> offer = lot.fruits().sound() > 0 ? judged.offer(lot) : Optional.empty();
    return lines.line(lot, offer, judged.asOf(lot), ranks.get(lot.code()), now);
  }

  private static Map<String, Integer> ranks(JudgedLots judged) {
    Map<String, Integer> ranks = new HashMap<>();
    for (Offer offer : judged.toEat()) {
      ranks.put(offer.lot().code(), ranks.size() + 1);
    }
    return ranks;
  }

  private SaidView said(List<Recorded> kept) {
    return said(List.of(), kept.stream().map(Recorded::entry).toList(), List.of());
  }

  private SaidView said(List<Long> ids, List<Entry> entries, List<String> warnings) {
    JudgedLots after = judged();
    Set<String> codes = new LinkedHashSet<>();
    entries.forEach(entry -> codes.add(entry.subject()));
    Map<String, Integer> ranks = ranks(after);
    return new SaidView(
        ids,
        inOrder(after.told(), ranks)
            .filter(lot -> codes.contains(lot.code()))
            .map(lot -> line(lot, after, ranks, now()))
            .toList(),
        warnings);
  }

  private List<String> warnings(JournalView before, List<Entry> entries) {
    Set<String> warnings = new LinkedHashSet<>();
    for (Entry entry : entries) {
      if (entry instanceof Weighed weighed) {
        before
            .lots()
            .find(weighed.lot())
            .flatMap(lot -> Warning.of(weighed, lot))
            .ifPresent(warnings::add);
      } else if (entry instanceof Moved moved) {
        warnings.addAll(misfits(moved.lot(), moved.place()));
      } else if (entry instanceof Harvested harvested) {
        warnings.addAll(misfits(harvested.lot(), harvested.place()));
      }
    }
    return List.copyOf(warnings);
  }

  private List<String> misfits(String code, String place) {
    JudgedLots judged = judged();
    return misfits.told(judged, judged.told().lots().find(code).stream().toList(), place);
  }
}
