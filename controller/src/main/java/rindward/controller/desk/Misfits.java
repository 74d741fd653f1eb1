package rindward.controller.desk;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.lot.Lot;
import rindward.controller.readiness.Fit;
import rindward.controller.room.Purpose;
import rindward.controller.room.Room;

/** What a person is told of a place at the moment lots come to it, once. */
public final class Misfits {
  private Misfits() {}

  /**
   * Returns a sentence for each of the lots that does not suit the place and was not accepted.
   *
   * @param isCured whether a lot's cure has ended, by measure or as it was told
   */
  public static List<String> told(
      List<Room> rooms,
      CropGuide crops,
      Collection<Lot> lots,
      Predicate<Lot> isCured,
      String place) {
    Optional<Room> room = rooms.stream().filter(r -> r.name().equals(place)).findFirst();
    if (room.isEmpty()) {
      return List.of("There is no probe in " + place + ": the time there will be unknown.");
    }
    return lots.stream()
        .filter(lot -> !lot.acceptedPlaces().contains(place))
        .flatMap(
            lot ->
                crops
                    .crop(lot.crop())
                    .flatMap(crop -> told(crop, room.get(), !isCured.test(lot)))
                    .map(sentence -> lot.code() + "  " + sentence)
                    .stream())
        .toList();
  }

  private static Optional<String> told(Crop crop, Room room, boolean isCuring) {
    return Fit.misfit(crop, room.range(), isCuring)
        .or(
            () ->
                isCuring && room.purpose() == Purpose.CURING
                    ? Optional.empty()
                    : Fit.tooNarrow(crop, room.range(), room.accuracy().temperatureMilliC()));
  }
}
