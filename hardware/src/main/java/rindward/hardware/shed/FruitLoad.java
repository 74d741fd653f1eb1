package rindward.hardware.shed;

/**
 * Fruit as it is carried into a room or out of it.
 *
 * @param code the lot's code, unique in the shed
 * @param massKg present mass
 * @param temperatureC its temperature, on entry the same through and through
 * @param wetKg water lying on its skin
 */
public record FruitLoad(
    String code, double massKg, double temperatureC, double wetKg, FruitPhysics physics) {

  public FruitLoad {
    if (!(massKg > 0)) {
      throw new IllegalArgumentException(
          "mass of " + code + " was " + massKg + " but it must be above 0 kg");
    }
    if (!(wetKg >= 0)) {
      throw new IllegalArgumentException(
          "water on " + code + " was " + wetKg + " but it must be 0 kg or more");
    }
  }

  /** Returns dry winter squash. */
  public static FruitLoad winterSquash(String code, double massKg, double temperatureC) {
    return new FruitLoad(code, massKg, temperatureC, 0, FruitPhysics.WINTER_SQUASH);
  }
}
