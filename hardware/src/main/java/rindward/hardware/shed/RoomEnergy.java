package rindward.hardware.shed;

import rindward.hardware.OutputKind;

/** Electricity that the outputs of one room have used, by kind, in J. */
final class RoomEnergy {
  private double heaterJ;
  private double circulationJ;
  private double exhaustJ;
  private double humidifierJ;
  private double dehumidifierJ;
  private double coolerJ;

  void add(RoomInputs on, Equipment equipment, double dtSeconds) {
    heaterJ += on.heater * equipment.heaterW() * dtSeconds;
    circulationJ += on.circulation * equipment.circulationW() * dtSeconds;
    exhaustJ += on.exhaust * equipment.exhaustW() * dtSeconds;
    humidifierJ += on.humidifier * equipment.humidifierW() * dtSeconds;
    dehumidifierJ += on.dehumidifier * equipment.dehumidifierW() * dtSeconds;
    coolerJ += on.cooler * equipment.coolerW() / equipment.coolerCop() * dtSeconds;
  }

  double kWh(OutputKind kind) {
    double joules =
        switch (kind) {
          case HEATER -> heaterJ;
          case CIRCULATION -> circulationJ;
          case EXHAUST -> exhaustJ;
          case HUMIDIFIER -> humidifierJ;
          case DEHUMIDIFIER -> dehumidifierJ;
          case COOLER -> coolerJ;
        };
    return joules / 3.6e6;
  }
}
