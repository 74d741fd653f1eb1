package rindward.controller.variety.liking;

/**
 * What it would take to know more, if the truth is as it seems.
 *
 * @param fruits more of this variety, each tasted by as many as before beside what it is compared
 *     with; 0 if it is settled already or no number that a grower has would do
 * @param sessions for these, two fruits in each
 */
public record Settling(int fruits, int sessions) {
  /** Nothing more is needed, or nothing would help. */
  public static final Settling NONE = new Settling(0, 0);

  private static final int MOST_FRUITS = 24;
  private static final double FRUITS_A_SESSION = 2;

  /** Standard normal value that is passed with a chance of nine in ten. */
  private static final double NINE_IN_TEN = 1.2816;

  /**
   * Reckons what brings the chance to nine in ten, either way.
   *
   * @param points by how much it differs from what was to be shown
   * @param error of that, now
   * @param perFruit variance that one fruit's mean over its tasters has
   * @param floor variance that no further fruit takes away: the tasters' own likings
   */
  static Settling of(double points, double error, double perFruit, double floor) {
    double wanted = points / NINE_IN_TEN * (points / NINE_IN_TEN) - floor;
    double now = error * error - floor;
    if (wanted <= 0 || now <= wanted) {
      return NONE;
    }
    double fruits = Math.ceil(perFruit * (1 / wanted - 1 / now));
    return fruits > MOST_FRUITS
        ? NONE
        : new Settling((int) fruits, (int) Math.ceil(fruits / FRUITS_A_SESSION));
  }
}
