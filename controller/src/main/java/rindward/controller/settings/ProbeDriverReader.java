package rindward.controller.settings;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.hardware.mqtt.NetworkProbeSettings;
import rindward.hardware.mqtt.PayloadField;
import rindward.hardware.sensor.SensorFamily;
import rindward.hardware.wired.I2cDriver;
import rindward.hardware.wired.I2cDriver.Branch;
import rindward.hardware.wired.KernelDriver;
import rindward.hardware.wired.KernelDriver.Door;
import rindward.hardware.wired.NetworkProbeDriver;
import rindward.hardware.wired.OneWireDriver;
import rindward.hardware.wired.ProbeDriver;
import rindward.hardware.wired.Simulated;

/** Reads what a probe hangs on: the driver's word, and the keys that this driver needs. */
final class ProbeDriverReader {
  private static final Map<String, Reader> READERS = readers();
  private static final Kind<String> WORD = Kind.word(READERS.keySet());
  private static final int SHT_ADDRESS = 0x44;
  private static final int BME280_ADDRESS = 0x76;

  private static final Kind<String> SERIAL =
      Kind.pattern("28-[0-9a-f]{12}", "be the serial of a DS18B20, as \"28-0316a2791bff\"");

  /** Reads the keys of one driver. */
  @FunctionalInterface
  private interface Reader {
    ProbeDriver apply(TableReader table, boolean holdsHeat);
  }

  private enum Unit {
    CELSIUS,
    FAHRENHEIT
  }

  private ProbeDriverReader() {}

  /**
   * Reads the driver; empty where its word is missing or none, so that no key can be judged.
   *
   * @param holdsHeat whether a heater is switched by what the probe says
   */
  static Optional<ProbeDriver> read(TableReader table, boolean holdsHeat) {
    if (!table.has("driver")) {
      table.missing("driver", "it must " + WORD.must());
      return Optional.empty();
    }
    return table
        .find("driver", WORD)
        .map(READERS::get)
        .map(reader -> reader.apply(table, holdsHeat));
  }

  private static Map<String, Reader> readers() {
    Map<String, Reader> readers = new LinkedHashMap<>();
    readers.put("simulated", (table, heat) -> new Simulated());
    readers.put("sht3x", (table, heat) -> i2c(table, SensorFamily.SHT3X, SHT_ADDRESS));
    readers.put("sht4x", (table, heat) -> i2c(table, SensorFamily.SHT4X, SHT_ADDRESS));
    readers.put("bme280", (table, heat) -> i2c(table, SensorFamily.BME280, BME280_ADDRESS));
    readers.put("1-wire", (table, heat) -> new OneWireDriver(table.required("serial", SERIAL)));
    readers.put("hwmon", (table, heat) -> kernel(table, Door.HWMON));
    readers.put("iio", (table, heat) -> kernel(table, Door.IIO));
    readers.put("mqtt", ProbeDriverReader::network);
    return readers;
  }

  private static ProbeDriver i2c(TableReader table, SensorFamily family, int usualAddress) {
    int bus = table.optional("bus", Kind.whole(0, 31), 1);
    int address = table.optional("address", Kind.address(0x08, 0x77), usualAddress);
    return new I2cDriver(family, bus, address, branch(table));
  }

  private static @Nullable Branch branch(TableReader table) {
    boolean hasChannel = table.has("channel");
    if (!table.has("multiplexer")) {
      if (hasChannel) {
        table.missing("multiplexer", "it must be there where a channel is named");
      }
      return null;
    }
    return new Branch(
        table.required("multiplexer", Kind.address(0x70, 0x77)),
        table.required("channel", Kind.whole(0, 7)));
  }

  private static ProbeDriver kernel(TableReader table, Door door) {
    return new KernelDriver(door, table.required("device", Kind.TEXT));
  }

  private static ProbeDriver network(TableReader table, boolean holdsHeat) {
    Unit unit = table.optional("unit", Kind.choice(Unit.class), Unit.CELSIUS);
    return new NetworkProbeDriver(
        new NetworkProbeSettings(
            table.name(),
            table.required("topic", Network.TOPIC),
            table.optional("temperature_at", Network.FIELD, PayloadField.WHOLE),
            unit == Unit.FAHRENHEIT,
            table.find("humidity_at", Network.FIELD).orElse(null),
            table.find("time_at", Network.FIELD).orElse(null),
            table.find("battery_at", Network.FIELD).orElse(null),
            holdsHeat
                ? table.optional("max_age", Network.MAX_AGE_OF_HEAT, Duration.ofSeconds(20))
                : table.optional("max_age", Network.MAX_AGE, Duration.ofMinutes(5))));
  }
}
