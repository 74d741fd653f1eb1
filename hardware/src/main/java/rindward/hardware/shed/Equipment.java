package rindward.hardware.shed;

import rindward.hardware.OutputKind;

/**
 * What the outputs of one room can do at full duty; zero for what it does not have. A humidifier
 * evaporates its water into the room's air, which it cools by the heat that takes; a dehumidifier
 * gives that heat back together with its electricity.
 *
 * @param exhaustM3PerS air drawn out, replaced by outdoor air
 * @param exhaustW electricity of the exhaust fan, which leaves with the air
 * @param circulationW electricity of the circulation fan, all of it heat in the room
 * @param humidifierW electricity of the humidifier, all of it heat in the room
 * @param coolerW heat the cooler removes, sensible and latent together
 * @param coolerCop heat removed per electricity used
 */
public record Equipment(
    double heaterW,
    double exhaustM3PerS,
    double exhaustW,
    double circulationW,
    double humidifierKgPerH,
    double humidifierW,
    double dehumidifierKgPerH,
    double dehumidifierW,
    double coolerW,
    double coolerCop) {

  /** A room with nothing in it. */
  public static final Equipment NONE = new Equipment(0, 0, 0, 0, 0, 0, 0, 0, 0, 1);

  /** Tells whether there is an output of this kind. */
  public boolean has(OutputKind kind) {
    return switch (kind) {
      case HEATER -> heaterW > 0;
      case CIRCULATION -> circulationW > 0;
      case EXHAUST -> exhaustM3PerS > 0;
      case HUMIDIFIER -> humidifierKgPerH > 0;
      case DEHUMIDIFIER -> dehumidifierKgPerH > 0;
      case COOLER -> coolerW > 0;
    };
  }

  /** Returns the same with another heater. */
  public Equipment withHeater(double watts) {
    return new Equipment(
        watts,
        exhaustM3PerS,
        exhaustW,
        circulationW,
        humidifierKgPerH,
        humidifierW,
        dehumidifierKgPerH,
        dehumidifierW,
        coolerW,
        coolerCop);
  }

  /** Returns the same with another circulation fan, in W. */
  public Equipment withCirculation(double watts) {
    return new Equipment(
        heaterW,
        exhaustM3PerS,
        exhaustW,
        watts,
        humidifierKgPerH,
        humidifierW,
        dehumidifierKgPerH,
        dehumidifierW,
        coolerW,
        coolerCop);
  }

  /** Returns the same with another exhaust fan, in m3/s and W. */
  public Equipment withExhaust(double m3PerS, double watts) {
    return new Equipment(
        heaterW,
        m3PerS,
        watts,
        circulationW,
        humidifierKgPerH,
        humidifierW,
        dehumidifierKgPerH,
        dehumidifierW,
        coolerW,
        coolerCop);
  }

  /** Returns the same with another humidifier, in kg of water per hour and W. */
  public Equipment withHumidifier(double kgPerH, double watts) {
    return new Equipment(
        heaterW,
        exhaustM3PerS,
        exhaustW,
        circulationW,
        kgPerH,
        watts,
        dehumidifierKgPerH,
        dehumidifierW,
        coolerW,
        coolerCop);
  }

  /** Returns the same with another dehumidifier, in kg of water per hour and W. */
  public Equipment withDehumidifier(double kgPerH, double watts) {
    return new Equipment(
        heaterW,
        exhaustM3PerS,
        exhaustW,
        circulationW,
        humidifierKgPerH,
        humidifierW,
        kgPerH,
        watts,
        coolerW,
        coolerCop);
  }

  /** Returns the same with another cooler, in W removed and W removed per W used. */
  public Equipment withCooler(double watts, double cop) {
    return new Equipment(
        heaterW,
        exhaustM3PerS,
        exhaustW,
        circulationW,
        humidifierKgPerH,
        humidifierW,
        dehumidifierKgPerH,
        dehumidifierW,
        watts,
        cop);
  }
}
