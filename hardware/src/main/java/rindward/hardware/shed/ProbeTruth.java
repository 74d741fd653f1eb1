package rindward.hardware.shed;

import java.util.List;
import rindward.hardware.air.SaturationPressure;

/**
 * What it is really like where a probe hangs. The cold corner is colder than the air by a share of
 * the difference to outdoors, 6 % in still air and 1.5 % while a fan moves it (judgement), and
 * holds the same vapour.
 */
final class ProbeTruth {
  private static final double STILL_SHARE = 0.06;
  private static final double MOVED_SHARE = 0.015;

  private final ShedModel model;
  private double temperatureC;
  private double humidityPct;

  ProbeTruth(ShedModel model) {
    this.model = model;
  }

  /** Looks at the place of one probe; the answer stands until the next look. */
  void look(ProbePlan probe, OutdoorAir outdoor) {
    RoomModel room = model.room(probe.room());
    switch (probe.place()) {
      case AIR -> air(room.airC(), room.vapourPressurePa());
      case CORNER -> {
        double circulating = model.inputs(probe.room()).circulation;
        double share = STILL_SHARE + (MOVED_SHARE - STILL_SHARE) * circulating;
        double airC = room.airC();
        air(airC - share * (airC - outdoor.temperatureC()), room.vapourPressurePa());
      }
      case PULP -> {
        temperatureC = pulpC(room, probe);
        humidityPct = 0;
      }
      case OUTDOOR -> air(outdoor.temperatureC(), outdoor.vapourPressurePa());
    }
  }

  private void air(double airC, double vapourPa) {
    temperatureC = airC;
    humidityPct = Math.min(100, 100 * vapourPa / SaturationPressure.overIceOrWaterPa(airC));
  }

  private static double pulpC(RoomModel room, ProbePlan probe) {
    List<FruitLot> lots = room.lots();
    for (int i = 0; i < lots.size(); i++) {
      FruitLot lot = lots.get(i);
      if (probe.lot() == null || probe.lot().equals(lot.code())) {
        return lot.coreC();
      }
    }
    return room.airC();
  }

  double temperatureC() {
    return temperatureC;
  }

  double humidityPct() {
    return humidityPct;
  }
}
