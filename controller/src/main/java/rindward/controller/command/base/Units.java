package rindward.controller.command.base;

/** The units a person types and reads. Inside, everything is in degrees C and metres. */
public enum Units {
  METRIC("C", "m"),
  US("F", "ft");

  private static final double METRES_PER_FOOT = 0.3048;

  private final String degrees;
  private final String lengths;

  Units(String degrees, String lengths) {
    this.degrees = degrees;
    this.lengths = lengths;
  }

  public String degrees() {
    return degrees;
  }

  public String lengths() {
    return lengths;
  }

  /** Returns in degrees C what a person gave in these units. */
  public double toCelsius(double temperature) {
    return this == US ? (temperature - 32) / 1.8 : temperature;
  }

  /** Returns in these units what is known in degrees C. */
  public double fromCelsius(double temperatureC) {
    return this == US ? temperatureC * 1.8 + 32 : temperatureC;
  }

  /** Returns in metres what a person gave in these units. */
  public double toMetres(double length) {
    return this == US ? length * METRES_PER_FOOT : length;
  }

  /** Returns in these units what is known in metres. */
  public double fromMetres(double metres) {
    return this == US ? metres / METRES_PER_FOOT : metres;
  }
}
