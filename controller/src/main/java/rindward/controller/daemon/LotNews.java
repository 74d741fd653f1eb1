package rindward.controller.daemon;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Keeping;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.Lived;
import rindward.controller.ledger.LotAccount;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Recorded;
import rindward.controller.readiness.Fit;
import rindward.controller.readiness.Readiness;
import rindward.controller.readiness.State;
import rindward.controller.readiness.Verdict;
import rindward.controller.room.Room;
import rindward.controller.settings.Settings;
import rindward.controller.store.SampleStore;
import rindward.controller.watch.LotNotes;
import rindward.controller.watch.LotStanding;

/**
 * What the alarms are told of the lots. Where they lie is cheap to say; what they have become needs
 * their whole record and is looked at less often. Reads the disk: for one thread that may wait.
 */
final class LotNews {
  /** That a lot has cured is news for so long. */
  private static final Duration FRESH = Duration.ofDays(3);

  /** What a lot has become changes within days. */
  private static final Duration BETWEEN_VERDICTS = Duration.ofMinutes(30);

  private final List<Room> rooms;
  private final CropGuide crops;
  private final long holdMillis;
  private final SampleStore samples;
  private Instant judged = Instant.EPOCH;
  private volatile Verdicts verdicts = Verdicts.NONE;

  private record Verdicts(Set<Finding> news, List<LotStanding> lots) {
    static final Verdicts NONE = new Verdicts(Set.of(), List.of());
  }

  LotNews(Settings settings, SampleStore samples) {
    this.rooms = settings.rooms();
    this.crops = settings.crops();
    this.holdMillis = settings.hold().toMillis();
    this.samples = samples;
  }

  /** Judges the lots anew, if it is time. Takes a while; for one thread that may wait. */
  void judge(List<Recorded> journal, Instant now) {
    if (Duration.between(judged, now).compareTo(BETWEEN_VERDICTS) >= 0) {
      judged = now;
      verdicts = verdicts(lots(journal), journal, now);
    }
  }

  /** Returns what is known now; for any thread. */
  LotNotes look(List<Recorded> journal) {
    List<Lot> lots = lots(journal);
    Map<String, Integer> freezing = new HashMap<>();
    Map<String, Set<Finding>> misfits = new HashMap<>();
    for (Lot lot : lots) {
      Optional<Crop> crop = crops.crop(lot.crop());
      Optional<Room> room = rooms.stream().filter(r -> r.name().equals(lot.place())).findFirst();
      if (crop.isPresent() && room.isPresent()) {
        freezing.merge(lot.place(), crop.get().keeping().freezing().value(), Math::max);
        if (isMisfit(lot, crop.get(), room.get())) {
          misfits
              .computeIfAbsent(lot.place(), place -> new HashSet<>())
              .add(new Finding(AlarmKind.LOTS_MISFIT, lot.code()));
        }
      }
    }
    return new LotNotes(freezing, misfits, verdicts.news(), verdicts.lots());
  }

  /** Only what does harm: what is merely less than best was told at the move. */
  private static boolean isMisfit(Lot lot, Crop crop, Room room) {
    int middle = room.range().temperature().middle();
    Keeping keeping = crop.keeping();
    int least =
        keeping.chilling().map(c -> c.threshold().value()).orElse(keeping.freezing().value());
    return !lot.acceptedPlaces().contains(room.name())
        && (middle < least || middle > keeping.upper().value())
        && Fit.misfit(crop, room.range(), lot.attested().isEmpty()).isPresent();
  }

  private static List<Lot> lots(List<Recorded> journal) {
    return Lots.of(journal).all().stream().filter(lot -> lot.fruits().sound() > 0).toList();
  }

  private Verdicts verdicts(List<Lot> lots, List<Recorded> journal, Instant now) {
    Set<Finding> found = new HashSet<>();
    List<LotStanding> standings = new ArrayList<>();
    for (Lot lot : lots) {
      crops
          .crop(lot.crop())
          .ifPresent(crop -> standings.add(judge(lot, crop, journal, now, found)));
    }
    return new Verdicts(found, standings);
  }

  private LotStanding judge(
      Lot lot, Crop crop, List<Recorded> journal, Instant now, Set<Finding> found) {
    List<Exposure> life = Exposure.of(lot, journal, samples::history, now);
    LotAccount account = LotAccount.of(life, crop, holdMillis);
    Instant cured = account.curedAt();
    if (crop.cure().isPresent() && cured != null && now.isBefore(cured.plus(FRESH))) {
      found.add(new Finding(AlarmKind.LOT_CURED, lot.code()));
    }
    Lived lived = Lived.of(lot, crop, life, account, holdMillis, now);
    Verdict verdict = Readiness.of(lot, crop, lived, now);
    kind(verdict.state()).ifPresent(kind -> found.add(new Finding(kind, lot.code())));
    return new LotStanding(
        lot.code(), lot.crop(), lot.variety(), lot.place(), lot.fruits().sound(), verdict.state());
  }

  private static Optional<AlarmKind> kind(State state) {
    return switch (state) {
      case READY -> Optional.of(AlarmKind.LOT_READY);
      case EAT_FIRST -> Optional.of(AlarmKind.LOT_EAT_FIRST);
      case PAST -> Optional.of(AlarmKind.LOT_PAST);
      case NOTHING_LEFT, UNLIKELY_EVER_GOOD, INJURED, CHECK_ONE, CURING, RESTING ->
          Optional.empty();
    };
  }
}
