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
import java.util.stream.Collectors;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Keeping;
import rindward.controller.journal.Recorded;
import rindward.controller.ledger.Accuracies;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.Lived;
import rindward.controller.ledger.LotAccount;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Sessions;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.readiness.Fit;
import rindward.controller.readiness.State;
import rindward.controller.room.Room;
import rindward.controller.settings.Settings;
import rindward.controller.store.samples.SampleStore;
import rindward.controller.variety.Experience;
import rindward.controller.variety.Grown;
import rindward.controller.variety.Tasted;
import rindward.controller.variety.VarietyName;
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

  private record Verdicts(Set<Finding> news, List<LotStanding> lots, Set<String> cured) {
    static final Verdicts NONE = new Verdicts(Set.of(), List.of(), Set.of());
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
      verdicts = verdicts(journal, now);
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
  private boolean isMisfit(Lot lot, Crop crop, Room room) {
    int middle = room.range().temperature().middle();
    Keeping keeping = crop.keeping();
    int least =
        keeping.chilling().map(c -> c.threshold().value()).orElse(keeping.freezing().value());
    boolean isCured = lot.attested().isPresent() || verdicts.cured().contains(lot.code());
    return !lot.acceptedPlaces().contains(room.name())
        && (middle < least || middle > keeping.upper().value())
        && Fit.misfit(crop, room.range(), !isCured).isPresent();
  }

  private static List<Lot> lots(List<Recorded> journal) {
    return Lots.of(journal).all().stream().filter(lot -> lot.fruits().sound() > 0).toList();
  }

  /** By the same light as every page: what others of its variety have shown counts. */
  private Verdicts verdicts(List<Recorded> journal, Instant now) {
    Set<VarietyName> here =
        lots(journal).stream().map(LotNews::variety).collect(Collectors.toSet());
    Accuracies accuracies = Accuracies.of(journal);
    Set<Finding> found = new HashSet<>();
    List<Grown> grown = new ArrayList<>();
    for (Lot lot : Lots.of(journal).all()) {
      if (here.contains(variety(lot))) {
        crops
            .crop(lot.crop())
            .ifPresent(crop -> grown.add(grown(lot, crop, accuracies, now, found)));
      }
    }
    Experience experience =
        Experience.of(grown, Tasted.byLot(List.copyOf(Sessions.of(journal).all())));
    List<LotStanding> standings = new ArrayList<>();
    for (Grown one : grown) {
      if (one.lot().fruits().sound() > 0) {
        standings.add(standing(experience.judge(one, now), found));
      }
    }
    Set<String> cured =
        grown.stream()
            .filter(one -> one.lived().cureEnd().isPresent())
            .map(one -> one.lot().code())
            .collect(Collectors.toSet());
    return new Verdicts(found, standings, cured);
  }

  private Grown grown(Lot lot, Crop crop, Accuracies accuracies, Instant now, Set<Finding> found) {
    List<Exposure> life = Exposure.of(lot, accuracies, samples::history, now);
    LotAccount account = LotAccount.of(life, crop, holdMillis);
    Instant cured = account.curedAt();
    if (lot.fruits().sound() > 0
        && crop.cure().isPresent()
        && cured != null
        && now.isBefore(cured.plus(FRESH))) {
      found.add(new Finding(AlarmKind.LOT_CURED, lot.code()));
    }
    return new Grown(lot, crop, Lived.of(lot, crop, life, account, holdMillis, now));
  }

  private static LotStanding standing(Offer offer, Set<Finding> found) {
    Lot lot = offer.lot();
    State state = offer.verdict().state();
    kind(state).ifPresent(kind -> found.add(new Finding(kind, lot.code())));
    return new LotStanding(
        lot.code(), lot.crop(), lot.variety(), lot.place(), lot.fruits().sound(), state);
  }

  private static VarietyName variety(Lot lot) {
    return new VarietyName(lot.crop(), lot.variety());
  }

  private static Optional<AlarmKind> kind(State state) {
    return switch (state) {
      case READY -> Optional.of(AlarmKind.LOT_READY);
      case EAT_FIRST -> Optional.of(AlarmKind.LOT_EAT_FIRST);
      case PAST -> Optional.of(AlarmKind.LOT_PAST);
      case STOPPED, NOTHING_LEFT, UNLIKELY_EVER_GOOD, INJURED, CHECK_ONE, CURING, RESTING ->
          Optional.empty();
    };
  }
}
