package rindward.hardware.sensor;

import rindward.hardware.Thousandths;

/**
 * The families of parts that can be read, and the accuracy that stands for a probe whose settings
 * state none: the widest typical figure of the family's data sheets, since a family is sold in
 * grades.
 */
public enum SensorFamily {
  /** SHT30: 3 %RH (SHT3x-ARP 2014) and 0.3 C (from memory); an SHT35 does better. */
  SHT3X("sht3x", 300, 3000),
  /** SHT40: 1.8 %RH and 0.2 C (data sheet SHT4x v6; the temperature from memory). */
  SHT4X("sht4x", 200, 1800),
  /** 3 %RH at 20..80 % and 25 C; 1 C over 0..65 C (data sheet rev. 1.6; the latter from memory). */
  BME280("bme280", 1000, 3000),
  /** 0.5 C over -10..85 C (data sheet DS18B20, 2008). */
  DS18B20("ds18b20", 500, Thousandths.NONE);

  private final String word;
  private final int accuracyMilliC;
  private final int accuracyMilliPct;

  SensorFamily(String word, int accuracyMilliC, int accuracyMilliPct) {
    this.word = word;
    this.accuracyMilliC = accuracyMilliC;
    this.accuracyMilliPct = accuracyMilliPct;
  }

  /** Returns the word used in settings. */
  public String word() {
    return word;
  }

  /** Returns how far a temperature may be off, in thousandths of a degree C. */
  public int accuracyMilliC() {
    return accuracyMilliC;
  }

  /**
   * Returns how far a humidity may be off, in thousandths of a percent; {@link Thousandths#NONE}
   * for a family without humidity.
   */
  public int accuracyMilliPct() {
    return accuracyMilliPct;
  }
}
