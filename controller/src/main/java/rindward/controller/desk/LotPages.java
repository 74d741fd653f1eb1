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
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.CropGuide;
import rindward.controller.desk.LotVerdicts.Judged;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Weighed;
import rindward.controller.ledger.History;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Warning;
import rindward.controller.readiness.EatingOrder;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.room.Room;
import rindward.controller.store.Door;
import rindward.controller.variety.Grown;
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
  private final List<Room> rooms;
  private final ZoneId zone;
  private final CropGuide crops;
  private final Door door;
  private final LotVerdicts verdicts;
  private final LotLines lines;
  private final LotChoices choices;
  private final LotDetail detail;
  private final LotAir air;
  private final LotSaying saying;
  private final InstantSource clock;
  private volatile @Nullable Told told;

  /**
   * @param holdMillis how long a sample holds at most
   * @param historyOf what was measured in a place; empty for a place without probes
   * @param later adds up what nobody waits for
   */
  public LotPages(
      List<Room> rooms,
      ZoneId zone,
      CropGuide crops,
      long holdMillis,
      Door door,
      Function<String, History> historyOf,
      Executor later,
      InstantSource clock) {
    this.rooms = List.copyOf(rooms);
    this.zone = zone;
    this.crops = crops;
    this.door = door;
    this.verdicts = new LotVerdicts(crops, holdMillis, historyOf, later);
    this.lines = new LotLines(crops);
    this.choices = new LotChoices(rooms, crops);
    this.detail = new LotDetail(new HashSet<>(choices.roomNames()), zone.getId());
    this.air = new LotAir(zone.getId(), holdMillis, historyOf);
    this.saying = new LotSaying(door, crops, zone);
    this.clock = clock;
  }

  @Override
  public LotsView lots(boolean all, int from, int size) {
    Told now = told();
    Instant at = now();
    Map<String, Integer> ranks = ranks(now, at);
    List<Lot> shown = inOrder(now, ranks).filter(lot -> all || lot.fruits().sound() > 0).toList();
    return new LotsView(
        at,
        zone.getId(),
        shown.size(),
        shown.stream().skip(from).limit(size).map(lot -> line(lot, now, ranks, at)).toList(),
        choices.planned(now.lots()),
        choices.crops(),
        choices.places(now.lots()),
        choices.roomNames(),
        LotChoices.freeCodes(now.lots()),
        LotChoices.words());
  }

  @Override
  public Optional<LotView> lot(String code) {
    Told now = told();
    Instant at = now();
    return now.lots()
        .find(code.toUpperCase(Locale.ROOT))
        .map(
            lot -> {
              Optional<Judged> judged = verdicts.lately(lot, now, at);
              LotLine line = lines.line(lot, judged, ranks(now, at).get(lot.code()), at);
              List<Grown> variety = verdicts.ofVariety(lot, now, at);
              return detail.view(lot, line, judged.map(Judged::offer), variety, now, at);
            });
  }

  @Override
  public Optional<ClimateView> air(String code, Instant from, Instant to, int slots) {
    Told now = told();
    return now.lots()
        .find(code.toUpperCase(Locale.ROOT))
        .map(
            lot ->
                air.view(
                    lot, verdicts.lately(lot, now, now()).map(Judged::offer), from, to, slots));
  }

  @Override
  public SaidView say(String kind, List<String> codes, Map<String, String> fields, LotChange change)
      throws LotRefused {
    Instant now = now();
    Told before = told();
    List<Entry> entries =
        saying.entries(kind, codes, fields, change.at() == null ? now : change.at());
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

  /** Returns what may be eaten now, the first first. */
  List<Offer> toEat() {
    return toEat(told(), now());
  }

  /** Returns every lot of a known type with what the air has done to it lately. */
  List<Grown> grown() {
    Told told = told();
    Instant now = now();
    return told.lots().all().stream()
        .flatMap(lot -> verdicts.grown(lot, told, now).stream())
        .toList();
  }

  /** Adds up what the first look at a page would have to wait for. */
  public void prepare() {
    var unused = toEat();
  }

  /** Forgets everything remembered; the next answers are the same, and slower. */
  public void forget() {
    verdicts.forget();
    told = null;
  }

  /** Told again only when something was said. */
  Told told() {
    List<Recorded> journal = door.journal();
    Told known = told;
    if (known == null || known.last() != Told.last(journal)) {
      known = Told.of(journal);
      told = known;
    }
    return known;
  }

  /** What is to be eaten first comes first, then what has sound fruits, then the rest. */
  private static Stream<Lot> inOrder(Told told, Map<String, Integer> ranks) {
    return told.lots().all().stream()
        .sorted(
            Comparator.comparingInt((Lot lot) -> ranks.getOrDefault(lot.code(), Integer.MAX_VALUE))
                .thenComparing(lot -> lot.fruits().sound() <= 0)
                .thenComparing(Comparator.comparing(Lot::harvestedAt).reversed())
                .thenComparing(Lot::code));
  }

  private LotLine line(Lot lot, Told told, Map<String, Integer> ranks, Instant now) {
    return lines.line(lot, judged(lot, told, now), ranks.get(lot.code()), now);
  }

  /** A lot without a fruit needs no verdict in a list. */
  private Optional<Judged> judged(Lot lot, Told told, Instant now) {
    return lot.fruits().sound() > 0 ? verdicts.lately(lot, told, now) : Optional.empty();
  }

  private List<Offer> toEat(Told told, Instant now) {
    return EatingOrder.of(
        told.lots().all().stream()
            .filter(lot -> lot.fruits().free() > 0)
            .map(lot -> verdicts.lately(lot, told, now))
            .flatMap(Optional::stream)
            .map(Judged::offer)
            .toList());
  }

  private Map<String, Integer> ranks(Told told, Instant now) {
    Map<String, Integer> ranks = new HashMap<>();
    for (Offer offer : toEat(told, now)) {
      ranks.put(offer.lot().code(), ranks.size() + 1);
    }
    return ranks;
  }

  private SaidView said(List<Recorded> kept) {
    return said(List.of(), kept.stream().map(Recorded::entry).toList(), List.of());
  }

  private SaidView said(List<Long> ids, List<Entry> entries, List<String> warnings) {
    Told after = told();
    Set<String> codes = new LinkedHashSet<>();
    entries.forEach(entry -> codes.add(entry.subject()));
    Instant now = now();
    Map<String, Integer> ranks = ranks(after, now);
    return new SaidView(
        ids,
        inOrder(after, ranks)
            .filter(lot -> codes.contains(lot.code()))
            .map(lot -> line(lot, after, ranks, now))
            .toList(),
        warnings);
  }

  private List<String> warnings(Told before, List<Entry> entries) {
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
    Told told = told();
    List<Lot> lots = told.lots().find(code).stream().toList();
    return Misfits.told(
        rooms,
        crops,
        lots,
        lot ->
            verdicts
                .lately(lot, told, now())
                .flatMap(judged -> judged.offer().lived().cureEnd())
                .isPresent(),
        place);
  }
}
