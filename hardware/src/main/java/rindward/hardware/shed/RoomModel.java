package rindward.hardware.shed;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rindward.hardware.OutputKind;
import rindward.hardware.air.SaturationPressure;

/**
 * The physics of one room. A step holds what was true at its start (saturation at every surface,
 * the weather, the outputs), solves the vapour exactly for that, then the heat with the latent heat
 * that the vapour moved. Together that is first order; it stays stable far beyond a minute a step,
 * and heat and water are kept to rounding. Freezing, and the carbon that fruit burns, are left out.
 * Not thread-safe; a step allocates nothing.
 */
public final class RoomModel {
  private final RoomPlan plan;
  private final List<FruitLot> lots = new ArrayList<>();
  private final RoomHeat heat;
  private final RoomWater water;
  private final RoomEnergy energy = new RoomEnergy();
  private final RunningBalance heatBalance;
  private final double outdoorWPerK;
  private final double groundWPerK;

  /** Builds the room with everything in it at one temperature and humidity, and no fruit. */
  public RoomModel(RoomPlan plan, double temperatureC, double relativeHumidityPct) {
    this.plan = plan;
    outdoorWPerK = plan.envelope().outdoorWPerK();
    groundWPerK = plan.envelope().groundWPerK();
    heat = new RoomHeat(plan, temperatureC, lots);
    water = new RoomWater(plan, temperatureC, relativeHumidityPct, lots);
    heatBalance = new RunningBalance(heat.heatJ());
  }

  /**
   * Carries fruit in.
   *
   * @throws IllegalArgumentException when a lot of that code lies here already
   */
  public void load(FruitLoad load) {
    if (lots.stream().anyMatch(lot -> lot.code().equals(load.code()))) {
      throw new IllegalArgumentException(
          "lot was '" + load.code() + "' but it must not lie in " + plan.name() + " already");
    }
    FruitLot lot = new FruitLot(load);
    lots.add(lot);
    heatBalance.book(lot.heatJ());
    water.carry(lot.condensateKg());
  }

  /**
   * Carries a lot out and returns it as it is now.
   *
   * @throws IllegalArgumentException when it is not here
   */
  public FruitLoad remove(String code) {
    FruitLot lot = lot(code);
    lots.remove(lot);
    heatBalance.book(-lot.heatJ());
    water.carry(-lot.condensateKg());
    return lot.asLoad();
  }

  /**
   * Takes one step.
   *
   * @param partitionW heat that comes through the partitions from the next rooms
   * @param dtSeconds length of the step, above 0
   */
  public void step(RoomInputs on, OutdoorAir outdoor, double partitionW, double dtSeconds) {
    Equipment equipment = plan.equipment();
    double airC = airC();
    double coolerW =
        on.cooler > 0
            ? DryingEquipment.coolerSensibleW(on, equipment, airC, vapourPressurePa(), outdoor)
            : 0;
    double flowM3PerS = Ventilation.m3PerS(plan, on, outdoor, airC);
    water.step(on, outdoor, flowM3PerS, airC, massC(), dtSeconds);

    double electricW =
        on.heater * equipment.heaterW()
            + on.circulation * equipment.circulationW()
            + on.humidifier * equipment.humidifierW()
            + on.dehumidifier * equipment.dehumidifierW();
    double solarW = plan.envelope().solarApertureM2() * outdoor.globalHorizontalWPerM2();
    double sorptionW = water.sorptionW(massC());
    // Sun and sorption warm walls and crates first; a room without such a mass, its air.
    double massW = solarW + sorptionW;
    double airW = electricW - coolerW + partitionW + water.latentToAirW();
    boolean hasMass = plan.massWPerK() > 0;
    heat.mass.sourceW = hasMass ? massW : 0;
    heat.air.sourceW = hasMass ? airW : airW + massW;

    double airWPerK = outdoorWPerK + flowM3PerS * plan.airJPerM3K();
    double meanAirC =
        heat.step(
            dtSeconds,
            airWPerK + groundWPerK,
            airWPerK * outdoor.temperatureC() + groundWPerK * outdoor.groundC());

    heatBalance.book(electricW * dtSeconds);
    heatBalance.book(-coolerW * dtSeconds);
    heatBalance.book(solarW * dtSeconds);
    heatBalance.book(partitionW * dtSeconds);
    heatBalance.book(sorptionW * dtSeconds);
    heatBalance.book(water.latentToAirW() * dtSeconds);
    heatBalance.book(airWPerK * (outdoor.temperatureC() - meanAirC) * dtSeconds);
    heatBalance.book(groundWPerK * (outdoor.groundC() - meanAirC) * dtSeconds);
    for (FruitLot lot : lots) {
      heatBalance.book(lot.sourceW() * dtSeconds);
    }
    heatBalance.book(water.settleMist(heat.air));
    energy.add(on, equipment, dtSeconds);
  }

  /** Returns the plan the room was built from. */
  public RoomPlan plan() {
    return plan;
  }

  /** Returns the temperature of the air. */
  public double airC() {
    return heat.air.temperatureC;
  }

  /** Returns the temperature of walls, crates and racks. */
  public double massC() {
    return heat.mass.temperatureC;
  }

  /** Returns the vapour pressure of the air. */
  public double vapourPressurePa() {
    return water.vapourPa();
  }

  /** Returns the relative humidity of the air in percent, over ice in frost. */
  public double relativeHumidityPct() {
    return water.relativeHumidityPct(airC());
  }

  /** Returns the dew point, or in frost the frost point. */
  public double dewPointC() {
    return SaturationPressure.temperatureC(vapourPressurePa());
  }

  /** Returns the humidity that the timber is in balance with, in percent. */
  public double timberPct() {
    return water.timberPct();
  }

  /** Returns the water that lies on walls, roof, floor and door. */
  public double wallFilmKg() {
    return water.wallFilmKg();
  }

  /** Returns the lots lying here, in the order in which they came. */
  public List<FruitLot> lots() {
    return Collections.unmodifiableList(lots);
  }

  /**
   * Returns one lot.
   *
   * @throws IllegalArgumentException when it is not here
   */
  public FruitLot lot(String code) {
    for (FruitLot lot : lots) {
      if (lot.code().equals(code)) {
        return lot;
      }
    }
    throw new IllegalArgumentException(
        "lot was '" + code + "' but it must be one that lies in " + plan.name());
  }

  /** Returns the electricity that all outputs of one kind have used. */
  public double kWh(OutputKind kind) {
    return energy.kWh(kind);
  }

  /** Returns the account of heat in J since the room was built. */
  public Balance heatBalance() {
    return heatBalance.at(heat.heatJ());
  }

  /** Returns the account of water in kg since the room was built. */
  public Balance waterBalance() {
    return water.balance();
  }
}
