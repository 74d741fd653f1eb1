package rindward.controller.diagnosis;

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
import rindward.controller.judge.LotNews;
import rindward.controller.judge.LotNews.What;
import rindward.controller.judge.Misfits;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Stop;
import rindward.controller.room.Room;

/**
 * Turns what was said of the lots, and what they were judged to be, into what the alarms must know.
 */
public final class LotFactCollector {
  private final Set<String> rooms;
  private final CropGuide crops;
  private final Misfits misfits;

  /**
   * @param rooms every place with probes
   */
  public LotFactCollector(List<Room> rooms, CropGuide crops) {
    this.rooms = rooms.stream().map(Room::name).collect(Collectors.toUnmodifiableSet());
    this.crops = crops;
    this.misfits = new Misfits(rooms.stream().map(Room::surroundings).toList());
  }

  /**
   * Looks at the lots as they lie now.
   *
   * @param news as they were last judged
   */
  public LotNotes look(Lots lots, LotNews news) {
    Map<String, Integer> freezing = new HashMap<>();
    Map<String, Set<Finding>> harmed = new HashMap<>();
    for (Lot lot : lots.all()) {
      Optional<Crop> crop = crops.crop(lot.crop());
      if (lot.fruits().sound() > 0 && crop.isPresent() && rooms.contains(lot.place())) {
        freezing.merge(lot.place(), crop.get().keeping().freezing().value(), Math::max);
        boolean isCuring = lot.attested().isEmpty() && !news.cured().contains(lot.code());
        if (misfits.isHarmed(lot, crop.get(), isCuring)) {
          harmed
              .computeIfAbsent(lot.place(), place -> new HashSet<>())
              .add(new Finding(AlarmKind.LOTS_MISFIT, lot.code()));
        }
      }
    }
    Set<Finding> ofShed =
        news.items().stream()
            .map(item -> new Finding(kind(item.what()), item.lot()))
            .collect(Collectors.toSet());
    ofShed.addAll(harmful(lots));
    return new LotNotes(freezing, harmed, ofShed, news.lots());
  }

  /** Told at once, and of lots that are used up too: a fruit may lie in somebody's kitchen. */
  private Set<Finding> harmful(Lots lots) {
    return lots.all().stream()
        .filter(lot -> Stop.of(lot, crops).isPresent())
        .map(lot -> new Finding(AlarmKind.LOT_HARMFUL, lot.code()))
        .collect(Collectors.toSet());
  }

  private static AlarmKind kind(What what) {
    return switch (what) {
      case CURED -> AlarmKind.LOT_CURED;
      case READY -> AlarmKind.LOT_READY;
      case EAT_FIRST -> AlarmKind.LOT_EAT_FIRST;
      case PAST -> AlarmKind.LOT_PAST;
    };
  }
}
