package rindward.hardware.shed;

import java.util.List;

/**
 * What stands between one room and the weather.
 *
 * @param surfaces walls, roof, floor and door of this room; the partition to the next room is the
 *     shed's
 * @param leakagePerHour air changes per hour through gaps, multiplied by (0.4 + 0.125 wind), wind
 *     in m/s
 * @param solarApertureM2 the area that, times the sun on a level surface, gives the sun's heat in
 *     the room
 */
public record Envelope(List<Surface> surfaces, double leakagePerHour, double solarApertureM2) {

  public Envelope {
    surfaces = List.copyOf(surfaces);
  }

  /**
   * One part of the envelope.
   *
   * @param uWPerM2K transmittance, ISO 6946
   * @param toGround true for a floor, which loses to the ground instead of to the outdoor air
   */
  public record Surface(String name, double areaM2, double uWPerM2K, boolean toGround) {}

  /** Returns U A of everything that faces the outdoor air, in W/K. */
  double outdoorWPerK() {
    return wPerK(false);
  }

  /** Returns U A of the floor, in W/K. */
  double groundWPerK() {
    return wPerK(true);
  }

  private double wPerK(boolean toGround) {
    return surfaces.stream()
        .filter(s -> s.toGround() == toGround)
        .mapToDouble(s -> s.areaM2() * s.uWPerM2K())
        .sum();
  }

  /** Returns air changes per hour at this wind. */
  double leakagePerHour(double windMPerS) {
    return leakagePerHour * (0.4 + 0.125 * windMPerS);
  }
}
