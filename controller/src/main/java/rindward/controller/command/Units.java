package rindward.controller.command;

/** The units a person types and reads. Inside, everything is in degrees C and metres. */
enum Units {
  METRIC("C", "m"),
  US("F", "ft");

  private static final double METRES_PER_FOOT = 0.3048;

  private final String degrees;
  private final String lengths;

  Units(String degrees, String lengths) {
    this.degrees = degrees;
    this.lengths = lengths;
  }

  String degrees() {
    return degrees;
  }

  String lengths() {
    return lengths;
  }

  /** Returns in degrees C what a person gave in these units. */
  double toCelsius(double temperature) {
    return this == US ? (temperature - 32) / 1.8 : temperature;
  }

  /** Returns in these units what is known in degrees C. */
  double fromCelsius(double temperatureC) {
    return this == US ? temperatureC * 1.8 + 32 : temperatureC;
  }

  /** Returns in metres what a person gave in these units. */
  double toMetres(double length) {
    return this == US ? length * METRES_PER_FOOT : length;
  }

  /** Returns in these units what is known in metres. */
  double fromMetres(double metres) {
    return this == US ? metres / METRES_PER_FOOT : metres;
  }
}
