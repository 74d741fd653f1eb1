package rindward.hardware.shed;

/**
 * What one lot is really like, for scoring and for the demo's eyes only.
 *
 * @param surfaceC temperature of the outer shell
 * @param coreC temperature of the core
 * @param massKg present mass without water lying on it
 * @param waterKg water lying on it
 * @param wet whether that can be seen
 */
public record FruitTruth(
    double surfaceC, double coreC, double massKg, double waterKg, boolean wet) {

  static FruitTruth of(FruitLot lot) {
    return new FruitTruth(
        lot.surfaceC(), lot.coreC(), lot.massKg(), lot.condensateKg(), lot.isWet());
  }
}
