package rindward.controller.judge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Crop;
import rindward.controller.crop.Keeping;
import rindward.controller.lot.Lot;
import rindward.controller.readiness.PlaceFit;
import rindward.controller.variety.Grown;

/**
 * Lots that lie where it does not suit them. All of it is told a person once, at the move; only
 * what does harm is worth an alarm. What was accepted is told no more.
 */
public final class Misfits {
  private final List<Surroundings> rooms;

  /**
   * @param rooms every place with probes
   */
  public Misfits(List<Surroundings> rooms) {
    this.rooms = List.copyOf(rooms);
  }

  /** Returns what a person is told at the moment lots come to a place, one sentence each. */
  public List<String> told(JudgedLots judged, Collection<Lot> lots, String place) {
    Optional<Surroundings> room = room(place);
    if (room.isEmpty()) {
      return List.of("There is no probe in " + place + ": the time there will be unknown.");
    }
    List<String> sentences = new ArrayList<>();
    for (Lot lot : lots) {
      if (!lot.acceptedPlaces().contains(place)) {
        judged
            .grown(lot)
            .flatMap(grown -> sentence(grown, room.get()))
            .ifPresent(sentence -> sentences.add(lot.code() + "  " + sentence));
      }
    }
    return sentences;
  }

  /** Tells whether the place where a lot lies does it harm that nobody has accepted. */
  public boolean isHarmed(Lot lot, Crop crop, boolean isCuring) {
    return room(lot.place())
        .filter(room -> !lot.acceptedPlaces().contains(room.place()))
        .filter(room -> harms(crop.keeping(), room.range().temperature().middle()))
        .filter(room -> PlaceFit.misfit(crop, room.range(), isCuring).isPresent())
        .isPresent();
  }

  private static boolean harms(Keeping keeping, int milliC) {
    int least =
        keeping.chilling().map(c -> c.threshold().value()).orElse(keeping.freezing().value());
    return milliC < least || milliC > keeping.upper().value();
  }

  private static Optional<String> sentence(Grown grown, Surroundings room) {
    Crop crop = grown.crop();
    boolean isCuring = grown.lived().cureEnd().isEmpty();
    return PlaceFit.misfit(crop, room.range(), isCuring)
        .or(
            () ->
                isCuring && room.cures()
                    ? Optional.empty()
                    : PlaceFit.tooNarrow(crop, room.range(), room.accuracyMilliC()));
  }

  private Optional<Surroundings> room(String place) {
    return rooms.stream().filter(room -> room.place().equals(place)).findFirst();
  }
}
