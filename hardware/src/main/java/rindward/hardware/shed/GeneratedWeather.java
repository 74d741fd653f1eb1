package rindward.hardware.shed;

/**
 * Invented weather of a temperate inland place: a season, days, and fronts that pass every few
 * days. Ahead of a front it grows milder and cloudy; behind it, colder, windy and clear. Everything
 * is a function of the seed and the moment, so any moment can be asked for in any order.
 *
 * <p>Sun: clear sky of Haurwitz 1945, dimmed by cloud as Kasten and Czeplak 1980 found. The shape
 * of the rest is judgement. Immutable.
 *
 * @param seed two seeds are two years
 * @param meanC mean temperature of the year
 * @param seasonC half the difference between the warmest and the coldest month
 * @param latitudeDeg latitude north
 * @param utcOffsetHours solar time less UTC
 */
public record GeneratedWeather(
    long seed, double meanC, double seasonC, double latitudeDeg, double utcOffsetHours)
    implements Weather {

  private static final double DAY_SECONDS = 86400;
  private static final double YEAR_DAYS = 365.2425;
  private static final double FRONT_DAYS = 4.5;
  private static final double COLDEST_DAY = 20;
  private static final double MEAN_PRESSURE_PA = 99500;

  /** A cold-winter site at 45 degrees north, a good place to need a heater. */
  public static GeneratedWeather temperate(long seed) {
    return new GeneratedWeather(seed, 9, 13, 45, 0);
  }

  @Override
  public OutdoorAir at(long epochSeconds) {
    double days = (epochSeconds + utcOffsetHours * 3600) / DAY_SECONDS;
    double dayOfYear = days % YEAR_DAYS;
    double hour = (days - Math.floor(days)) * 24;
    double season = -Math.cos(2 * Math.PI * (dayOfYear - COLDEST_DAY) / YEAR_DAYS);

    double fronts = days / FRONT_DAYS;
    long front = (long) Math.floor(fronts);
    double phase = fronts - front;
    double strength = strength(front);
    // From -1 just behind a front to +1 just ahead of the next; the change takes 6 % of the time.
    double passing = Math.max(0, 1 - phase / 0.06);
    double swing = (2 * phase - 1) * strength(front + 1) * (1 - passing) + passing * strength;
    double cloud = clamp(0.25 + 0.75 * Math.pow(phase, 3) + 0.5 * passing + noise(3, days * 4));
    double clear = 1 - cloud;

    double daily = -(1.5 + 4.5 * clear) * Math.cos(2 * Math.PI * (hour - 3) / 24);
    double meanTodayC = meanC + seasonC * season + 4.5 * swing + 1.5 * noise(1, days * 1.3);
    double temperatureC = meanTodayC + daily + 0.4 * noise(2, days * 24);
    double dewPointC = Math.min(temperatureC - 0.2, meanTodayC - 1 - 5 * clear);
    double wind = Math.max(0, 2.5 + 5 * passing + 1.5 * noise(4, days * 8) + 0.8 * daily / 6);
    double pressurePa = MEAN_PRESSURE_PA + 900 * Math.sin(2 * Math.PI * phase);
    // Ground at a metre or two follows the season five weeks late and a third as far.
    double groundSeason = -Math.cos(2 * Math.PI * (dayOfYear - COLDEST_DAY - 35) / YEAR_DAYS);
    return new OutdoorAir(
        temperatureC,
        Water.overLiquidPa(dewPointC),
        pressurePa,
        wind,
        globalHorizontal(dayOfYear, hour, cloud),
        meanC + 1 + 0.35 * seasonC * groundSeason);
  }

  // Haurwitz: G = 1098 sin h exp(-0.057 / sin h); Kasten and Czeplak: G (1 - 0.75 N^3.4).
  private double globalHorizontal(double dayOfYear, double hour, double cloud) {
    double declination = Math.toRadians(-23.45) * Math.cos(2 * Math.PI * (dayOfYear + 10) / 365);
    double latitude = Math.toRadians(latitudeDeg);
    double hourAngle = Math.toRadians(15 * (hour - 12));
    double sinHeight =
        Math.sin(latitude) * Math.sin(declination)
            + Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle);
    if (sinHeight <= 0.01) {
      return 0;
    }
    return 1098 * sinHeight * Math.exp(-0.057 / sinHeight) * (1 - 0.75 * Math.pow(cloud, 3.4));
  }

  private double strength(long front) {
    return 1 + 0.7 * random(5, front);
  }

  /** Smooth noise in -1..1 that changes once per unit of {@code x}. */
  private double noise(int channel, double x) {
    long cell = (long) Math.floor(x);
    double u = x - cell;
    double blend = u * u * (3 - 2 * u);
    return random(channel, cell) * (1 - blend) + random(channel, cell + 1) * blend;
  }

  /** A number in -1..1 that depends on seed, channel and cell only (the mixer of SplitMix64). */
  private double random(int channel, long cell) {
    long z = seed * 0x9E3779B97F4A7C15L + cell * 0xD1B54A32D192ED03L + channel;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    z = z ^ (z >>> 31);
    return (z >> 11) * 0x1.0p-52;
  }

  private static double clamp(double share) {
    return Math.max(0, Math.min(1, share));
  }
}
