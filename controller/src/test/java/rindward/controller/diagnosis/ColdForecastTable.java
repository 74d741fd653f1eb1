package rindward.controller.diagnosis;

import java.io.IOException;
import java.util.Locale;
import rindward.controller.diagnosis.ColdTrial.Outcome;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.ShedFault.Kind;

/** Prints what the forecast of cold is worth: every fault, many years, misses and false words. */
final class ColdForecastTable {
  private ColdForecastTable() {}

  public static void main(String[] args) throws IOException {
    for (double kg : new double[] {600, 400, 300, 80}) {
      for (int seed = 1; seed <= 16; seed++) {
        print("heater dead", ColdTrial.deadHeater(kg, seed, 11.5));
      }
    }
    ShedFault door = ShedFault.of(Kind.DOOR_OPEN, "storage", 0.2);
    ShedFault stuck = ShedFault.of(Kind.OUTPUT_STUCK_ON, "storage-exhaust");
    for (int seed = 1; seed <= 12; seed++) {
      print("door ajar", new ColdTrial(400, seed, 12, 750, door, 5 + seed % 3, seed * 5 % 24, 8));
      print("fan stuck", new ColdTrial(400, seed, 12, 750, stuck, 5 + seed % 3, seed * 5 % 24, 8));
      print("heater small", new ColdTrial(400, seed, 12, 300, null, 30, 0, 8));
      print("nothing broken", new ColdTrial(400, seed, 12, 750, null, 30, 0, 0));
    }
  }

  private static void print(String what, ColdTrial trial) throws IOException {
    Outcome o = trial.run();
    System.out.printf(
        Locale.ROOT,
        "%-15s %4.0f kg, year %2d: crossed %4.0f, spoken %4.0f, said %4d, heater found dead %4.0f,"
            + " fall seen %4.1f; false before: %d forecasts, %d heaters, %d falls%n",
        what,
        trial.kg(),
        trial.seed(),
        o.crossed(),
        o.spoken(),
        o.said(),
        o.heaterDead(),
        o.fallSeen(),
        o.falseForecasts(),
        o.falseHeater(),
        o.falseFalls());
  }
}
