package rindward.controller.settings;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.ProbePlace;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.hardware.pi4j.Pi4jI2cBus;
import rindward.hardware.sensor.I2cAddresses;
import rindward.hardware.sensor.SensorFamily;
import rindward.hardware.wired.I2cDriver;
import rindward.hardware.wired.Offset;
import rindward.hardware.wired.ProbeDriver;
import rindward.hardware.wired.Simulated;

/** Reads the probes of a settings file, and sees to it that no part is read for two of them. */
final class ProbeReader {
  private final Map<String, TableReader> rooms;
  private final Map<ProbeDriver, String> parts = new HashMap<>();
  private final Map<String, I2cAddresses> buses = new HashMap<>();

  private final Predicate<String> isHeated;

  private ProbeReader(Map<String, TableReader> rooms, Predicate<String> isHeated) {
    this.rooms = rooms;
    this.isHeated = isHeated;
  }

  /**
   * Reads every table of {@code probes}.
   *
   * @param rooms those that the file declares
   * @param isHeated whether a room has a heater
   */
  static List<ProbeSetting> read(
      Map<String, TableReader> probes, Map<String, TableReader> rooms, Predicate<String> isHeated) {
    ProbeReader reader = new ProbeReader(rooms, isHeated);
    List<ProbeSetting> all = new ArrayList<>();
    probes.values().forEach(table -> all.add(reader.probe(table)));
    return all;
  }

  private ProbeSetting probe(TableReader table) {
    ProbePlace place = table.optional("place", Kind.choice(ProbePlace.class), ProbePlace.AIR);
    String room = place == ProbePlace.OUTDOOR ? "" : RoomName.read(table, rooms);
    boolean holdsHeat = place != ProbePlace.PULP && isHeated.test(room);
    Optional<ProbeDriver> driver = ProbeDriverReader.read(table, holdsHeat);
    ProbeDriver known = driver.orElse(new Simulated());
    Accuracy accuracy = accuracy(table, known);
    Offset offset = table.table("offset").map(ProbeReader::offset).orElse(Offset.NONE);
    if (driver.isPresent()) {
      table.rejectUnknown();
      claim(table, known);
    }
    return new ProbeSetting(table.name(), room, place, known, offset, accuracy);
  }

  private static Accuracy accuracy(TableReader table, ProbeDriver driver) {
    Optional<TableReader> stated = table.table("accuracy");
    if (stated.isPresent()) {
      return accuracyStated(stated.get(), driver);
    }
    if (table.has("accuracy")) {
      return Accuracy.EXACT;
    }
    return driver
        .family()
        .map(family -> usual(family, driver))
        .orElseGet(
            () -> {
              table.missing(
                  "accuracy",
                  "it must say what the maker states, for example"
                      + (driver.hasHumidity()
                          ? " { temperature = 0.2, humidity = 2 }"
                          : " { temperature = 0.2 }"));
              return Accuracy.EXACT;
            });
  }

  private static Accuracy accuracyStated(TableReader table, ProbeDriver driver) {
    Kind<Integer> humidity = Kind.thousandths(0, 50_000);
    Accuracy stated =
        new Accuracy(
            table.required("temperature", Kind.thousandths(0, 10_000)),
            driver.hasHumidity() ? table.required("humidity", humidity) : 0);
    table.rejectUnknown();
    return stated;
  }

  private static Accuracy usual(SensorFamily family, ProbeDriver driver) {
    return new Accuracy(
        family.accuracyMilliC(), driver.hasHumidity() ? family.accuracyMilliPct() : 0);
  }

  private static Offset offset(TableReader table) {
    Offset offset =
        new Offset(
            table.optional("temperature", Kind.thousandths(-5_000, 5_000), 0),
            table.optional("humidity", Kind.thousandths(-20_000, 20_000), 0));
    table.rejectUnknown();
    return offset;
  }

  /** Two sensors of one address do not fail, they lie: it is told here, before anything opens. */
  private void claim(TableReader table, ProbeDriver driver) {
    if (driver instanceof I2cDriver i2c) {
      try {
        i2c.claim(
            table.name(),
            buses.computeIfAbsent(
                i2c.bus(), bus -> new I2cAddresses(Pi4jI2cBus.of(i2c.busNumber()))));
      } catch (IOException e) {
        table.problem("address", String.valueOf(e.getMessage()));
      }
    } else if (!(driver instanceof Simulated)) {
      String other = parts.putIfAbsent(driver, table.name());
      if (other != null) {
        table.problem(
            "driver",
            "probes."
                + table.name()
                + " was "
                + driver.place()
                + " but it must not be the part of probes."
                + other
                + " too");
      }
    }
  }
}
