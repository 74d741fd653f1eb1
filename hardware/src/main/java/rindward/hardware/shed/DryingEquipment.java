package rindward.hardware.shed;

/**
 * How much water a dehumidifier and a cooler take from the air. The dehumidifier gives its rated
 * flow down to 40 % and nothing below 20 % (judgement). The cooler moves the air along the straight
 * line towards its coil, kept at 3 C (from memory): latent to sensible heat is as h 0.622/P (p -
 * p_coil) to cp (Ta - T_coil).
 */
final class DryingEquipment {
  private static final double COIL_C = 3;
  private static final double COIL_PA = 757.9;
  private static final double FULL_COOLING_ABOVE_COIL_K = 8;

  private DryingEquipment() {}

  /** Returns the dehumidifier's flow in kg/s. */
  static double dehumidifierKgPerS(RoomInputs on, Equipment equipment, double relativeHumidityPct) {
    double share = Math.max(0, Math.min(1, (relativeHumidityPct - 20) / 20));
    return on.dehumidifier * equipment.dehumidifierKgPerH() / 3600 * share;
  }

  /** Returns the water that condenses on the cooler's coil, in kg/s. */
  static double coolerKgPerS(
      RoomInputs on, Equipment equipment, double airC, double vapourPa, OutdoorAir outdoor) {
    return totalW(on, equipment, airC)
        * latentShare(airC, vapourPa, outdoor.pressurePa())
        / Water.latentJPerKg(COIL_C);
  }

  /** Returns the heat that the cooler takes from the air's temperature, in W. */
  static double coolerSensibleW(
      RoomInputs on, Equipment equipment, double airC, double vapourPa, OutdoorAir outdoor) {
    return totalW(on, equipment, airC) * (1 - latentShare(airC, vapourPa, outdoor.pressurePa()));
  }

  // Fades as the air nears the coil.
  private static double totalW(RoomInputs on, Equipment equipment, double airC) {
    double share = Math.max(0, Math.min(1, (airC - COIL_C) / FULL_COOLING_ABOVE_COIL_K));
    return on.cooler * equipment.coolerW() * share;
  }

  private static double latentShare(double airC, double vapourPa, double pressurePa) {
    if (vapourPa <= COIL_PA || airC <= COIL_C) {
      return 0;
    }
    double latent = Water.latentJPerKg(COIL_C) * 0.621945 / pressurePa * (vapourPa - COIL_PA);
    return latent / (latent + 1006 * (airC - COIL_C));
  }
}
