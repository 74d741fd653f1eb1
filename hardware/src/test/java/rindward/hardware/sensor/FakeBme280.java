package rindward.hardware.sensor;

import java.io.IOException;

/** A BME280 as a file of registers: it measures when told, sleeps, and forgets when power fails. */
final class FakeBme280 extends FakeDevice {
  private final FakeTime time;
  private final int[] registers = new int[256];
  private int pointer;
  private long doneMillis;
  String burst = "800000 7EED00 61A8";
  boolean hasNoisyWire;
  boolean isStuckBusy;

  FakeBme280(FakeTime time) {
    this.time = time;
    registers[0xD0] = 0x60;
    put(0x88, "706B 4367 18FC");
    registers[0xA1] = 75;
    put(0xE1, "6A01 00 14 0D 00 1E");
    losePower();
  }

  void losePower() {
    put(0xF2, "00 00 00 00");
    put(0xF7, "800000 800000 8000");
    doneMillis = time.passedMillis() + 2;
  }

  /** Makes it the sensor without humidity. */
  void becomeBmp280() {
    registers[0xD0] = 0x58;
  }

  @Override
  void take(byte[] bytes) throws IOException {
    pointer = bytes[0] & 0xFF;
    if (bytes.length < 2) {
      return;
    }
    int value = bytes[1] & 0xFF;
    if (pointer == 0xE0 && value == 0xB6) {
      losePower();
    } else if (pointer == 0xF4 && (value & 0b11) == 0b01) {
      measure(value);
    } else {
      registers[pointer] = value;
    }
  }

  private void measure(int control) {
    boolean hasTemperature = control >> 5 == 1;
    boolean hasHumidity = registers[0xF2] == 1;
    put(0xF7, burst.substring(0, 7));
    put(0xFA, hasTemperature ? burst.substring(7, 14) : "800000");
    put(0xFD, hasHumidity ? burst.substring(14) : "8000");
    doneMillis = time.passedMillis() + 7;
  }

  @Override
  byte[] give(int count) {
    byte[] given = new byte[count];
    for (int i = 0; i < count; i++) {
      int register = pointer + i;
      given[i] = (byte) (register == 0xF3 ? status() : registers[register]);
    }
    if (hasNoisyWire) {
      given[count - 1] ^= (byte) time.passedMillis();
      time.millis(1);
    }
    return given;
  }

  private int status() {
    return isStuckBusy || time.passedMillis() < doneMillis ? 0b1001 : 0;
  }

  private void put(int register, String digits) {
    byte[] bytes = Hex.bytes(digits);
    for (int i = 0; i < bytes.length; i++) {
      registers[register + i] = bytes[i] & 0xFF;
    }
  }
}
