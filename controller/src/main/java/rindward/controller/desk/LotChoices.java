package rindward.controller.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Purpose;
import rindward.controller.lot.LotCodes;
import rindward.controller.lot.Lots;
import rindward.controller.room.Room;
import rindward.dashboard.lots.LotsView.ChoicesView;
import rindward.dashboard.lots.LotsView.CropView;
import rindward.dashboard.lots.LotsView.PlanView;

/** What a page offers where there is a choice, so that nobody types a name in the shed. */
final class LotChoices {
  /** So many lots may come in before a phone has been near the network again. */
  private static final int FREE_CODES = 12;

  private final List<Room> rooms;
  private final CropGuide crops;

  LotChoices(List<Room> rooms, CropGuide crops) {
    this.rooms = List.copyOf(rooms);
    this.crops = crops;
  }

  /** Returns every type of the crop guide. */
  List<CropView> crops() {
    return crops.crops().stream().map(crop -> new CropView(crop.key(), crop.name())).toList();
  }

  /** Returns the words among which an entry chooses. */
  static ChoicesView words() {
    return new ChoicesView(words(Cause.values()), words(Purpose.values()), words(Grade.values()));
  }

  /** Returns the plots whose lot has not come in. */
  List<PlanView> planned(Lots lots) {
    return lots.plans().values().stream()
        .filter(plan -> lots.find(plan.lot()).isEmpty())
        .map(
            plan ->
                new PlanView(
                    plan.lot(),
                    plan.plot(),
                    plan.crop(),
                    crops.crop(plan.crop()).map(Crop::name).orElse(plan.crop()),
                    plan.variety()))
        .toList();
  }

  /** Returns the rooms, then every other place where a lot has been. */
  List<String> places(Lots lots) {
    Set<String> places = new LinkedHashSet<>(roomNames());
    lots.all().forEach(lot -> lot.stays().forEach(stay -> places.add(stay.place())));
    return List.copyOf(places);
  }

  /** Returns the places that have probes. */
  List<String> roomNames() {
    return rooms.stream().map(Room::name).toList();
  }

  /** Returns codes that no lot and no plan has. */
  static List<String> freeCodes(Lots lots) {
    Set<String> taken = new HashSet<>(lots.codes());
    List<String> free = new ArrayList<>();
    while (free.size() < FREE_CODES) {
      Optional<String> code = LotCodes.suggest(taken);
      if (code.isEmpty()) {
        break;
      }
      free.add(code.get());
      taken.add(code.get());
    }
    return free;
  }

  private static List<String> words(Enum<?>[] values) {
    return Arrays.stream(values).map(Enum::toString).toList();
  }
}
