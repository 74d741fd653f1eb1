package rindward.hardware.shed;

/**
 * What one room is really like, for scoring and for the demo's eyes only: control sees probes.
 *
 * @param coldestFruitC coldest shell of any lot; NaN in an empty room
 * @param coldestCoreC coldest core of any lot; NaN in an empty room
 * @param fruitWaterKg water lying on fruit
 * @param wetFruit whether any lot is visibly wet
 * @param wallWaterKg water lying on the envelope
 */
public record RoomTruth(
    double airC,
    double relativeHumidityPct,
    double dewPointC,
    double coldestFruitC,
    double coldestCoreC,
    double fruitWaterKg,
    boolean wetFruit,
    double wallWaterKg) {

  static RoomTruth of(RoomModel room) {
    double surfaceC = Double.NaN;
    double coreC = Double.NaN;
    double waterKg = 0;
    boolean wet = false;
    for (FruitLot lot : room.lots()) {
      surfaceC = Double.isNaN(surfaceC) ? lot.surfaceC() : Math.min(surfaceC, lot.surfaceC());
      coreC = Double.isNaN(coreC) ? lot.coreC() : Math.min(coreC, lot.coreC());
      waterKg += lot.condensateKg();
      wet |= lot.isWet();
    }
    return new RoomTruth(
        room.airC(),
        room.relativeHumidityPct(),
        room.dewPointC(),
        surfaceC,
        coreC,
        waterKg,
        wet,
        room.wallFilmKg());
  }
}
