package rindward.hardware.shed;

import java.util.ArrayList;
import java.util.List;
import rindward.hardware.air.SaturationPressure;

/**
 * Where the water of one room is and how it moves in a step: vapour in the air, timber, films on
 * the envelope, and on and out of the fruit. Outputs and surfaces are taken as they are when the
 * step begins.
 */
final class RoomWater {
  private final RoomPlan plan;
  private final List<FruitLot> lots;
  private final List<WallFilm> walls = new ArrayList<>();
  private final RoomVapour vapour;
  private final TimberBuffer timber;
  private final RunningBalance balance;
  private double latentToAirW;

  RoomWater(RoomPlan plan, double temperatureC, double relativeHumidityPct, List<FruitLot> lots) {
    this.plan = plan;
    this.lots = lots;
    for (Envelope.Surface surface : plan.envelope().surfaces()) {
      walls.add(new WallFilm(surface));
    }
    double saturationPa = SaturationPressure.overIceOrWaterPa(temperatureC);
    vapour =
        new RoomVapour(
            plan.volumeM3(), plan.referenceC(), relativeHumidityPct / 100 * saturationPa);
    timber = new TimberBuffer(plan.timber(), relativeHumidityPct);
    balance = new RunningBalance(waterKg());
  }

  /** Moves the water of one step and leaves the heat that it carried with lots and timber. */
  void step(
      RoomInputs on,
      OutdoorAir outdoor,
      double flowM3PerS,
      double airC,
      double massC,
      double dtSeconds) {
    Equipment equipment = plan.equipment();
    double startPa = vapour.vapourPa();
    double ventKgPerSPa =
        flowM3PerS / (Water.GAS_CONSTANT * (plan.referenceC() + Water.ZERO_C_IN_KELVIN));
    double humidifierKgPerS = on.humidifier * equipment.humidifierKgPerH() / 3600;
    double dehumidifierKgPerS =
        on.dehumidifier > 0
            ? DryingEquipment.dehumidifierKgPerS(on, equipment, relativeHumidityPct(airC))
            : 0;
    double coolerKgPerS =
        on.cooler > 0 ? DryingEquipment.coolerKgPerS(on, equipment, airC, startPa, outdoor) : 0;

    vapour.begin();
    vapour.exchange(ventKgPerSPa, outdoor.vapourPressurePa());
    vapour.source(humidifierKgPerS - dehumidifierKgPerS - coolerKgPerS);
    timber.offerWater(vapour, massC);
    for (FruitLot lot : lots) {
      lot.offerWater(vapour, dtSeconds);
    }
    for (WallFilm wall : walls) {
      wall.offerWater(vapour, airC, outdoor, dtSeconds);
    }

    double meanPa = vapour.step(dtSeconds);

    balance.book(ventKgPerSPa * (outdoor.vapourPressurePa() - meanPa) * dtSeconds);
    balance.book(humidifierKgPerS * dtSeconds);
    balance.book(-(dehumidifierKgPerS + coolerKgPerS) * dtSeconds);
    timber.exchangeWater(meanPa, dtSeconds);
    // The cooler's latent heat leaves with its coil; the dehumidifier's stays in the room.
    latentToAirW = (dehumidifierKgPerS - humidifierKgPerS) * Water.latentJPerKg(airC);
    for (FruitLot lot : lots) {
      double before = lot.massKg();
      balance.clamp(lot.exchangeWater(meanPa, dtSeconds));
      balance.book(before - lot.massKg());
    }
    for (WallFilm wall : walls) {
      balance.clamp(wall.exchangeWater(meanPa, dtSeconds));
      balance.book(-wall.runOff());
      latentToAirW += wall.latentW();
    }
  }

  /**
   * Takes out of the air what it cannot hold, warming it by the heat that frees, and lets it settle
   * as a film on the envelope. Returns that heat in J.
   */
  double settleMist(HeatNode air) {
    double saturationPa = SaturationPressure.overIceOrWaterPa(air.temperatureC);
    double excessPa = vapour.vapourPa() - saturationPa;
    if (excessPa <= 0) {
      return 0;
    }
    // Warming raises saturation: K dp (1 + K h dps/dT / C)^-1 condenses.
    double latentJPerKg = Water.latentJPerKg(air.temperatureC);
    double capacity = vapour.capacityKgPerPa();
    double slope = Water.saturationSlopePaPerK(saturationPa, air.temperatureC);
    double kg = capacity * excessPa / (1 + capacity * latentJPerKg * slope / air.capacityJPerK);
    vapour.take(kg);
    if (walls.isEmpty()) {
      balance.book(-kg);
    }
    for (WallFilm wall : walls) {
      wall.settle(kg / walls.size());
    }
    air.temperatureC += kg * latentJPerKg / air.capacityJPerK;
    return kg * latentJPerKg;
  }

  /** Books films and the like that are carried in, or with a minus sign out. */
  void carry(double kg) {
    balance.book(kg);
  }

  /** Returns the latent heat that the last step brought to the air itself. */
  double latentToAirW() {
    return latentToAirW;
  }

  /** Returns the heat of binding that the last step brought to the inner mass. */
  double sorptionW(double massC) {
    return timber.latentW(massC);
  }

  double vapourPa() {
    return vapour.vapourPa();
  }

  double relativeHumidityPct(double airC) {
    return 100 * vapour.vapourPa() / SaturationPressure.overIceOrWaterPa(airC);
  }

  double timberPct() {
    return timber.balancePct();
  }

  double wallFilmKg() {
    double sum = 0;
    for (WallFilm wall : walls) {
      sum += wall.filmKg();
    }
    return sum;
  }

  private double waterKg() {
    double sum = vapour.massKg() + timber.waterKg() + wallFilmKg();
    for (FruitLot lot : lots) {
      sum += lot.condensateKg();
    }
    return sum;
  }

  Balance balance() {
    return balance.at(waterKg());
  }
}
