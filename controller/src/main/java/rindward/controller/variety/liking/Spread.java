package rindward.controller.variety.liking;

import rindward.controller.mixed.HalfT;

/**
 * What scores differ by, with what is believed of each before the grower's own scores are in: the
 * scale of a half-t prior, in points of the nine-point scale. Two panels were published: tasters of
 * chocolate on 0 to 10 (SensoMineR: level 0.98, rest 1.5, session by panelist 0.19) and consumers
 * of ham on nine points (lmerTest: product 0.37, taster 0.61, taster by product 1.77, rest 1.30).
 */
public enum Spread {
  /** Varieties of a type. Ham and winter squash differ less and more: common practice. */
  VARIETY(0, 1.0),
  /**
   * Lots of a variety: plots and years. Nothing is published; common practice. It decides how much
   * two lots say of a variety; one lot says the same whatever stands here, for it is spoken of as
   * grown once.
   */
  LOT(1, 0.35),
  /** Fruits of a lot. Nothing is published; common practice. */
  FRUIT(2, 0.8),
  /** Tasters' levels: chocolate 0.98, ham 0.61. */
  TASTER(3, 1.0),
  /** A taster's own liking for a variety: ham 1.77, but untrained people; common practice. */
  TASTER_BY_VARIETY(4, 0.7),
  /** Sessions and their goes: chocolate 0.19. */
  OCCASION(5, 0.3),
  /** The rest of a score: chocolate 1.5, ham 1.3. */
  REST(6, 1.4),
  /** What a score from a kitchen has on top of that. Common practice. */
  KITCHEN(7, 1.0);

  private final int place;
  private final double scale;

  Spread(int place, double scale) {
    this.place = place;
    this.scale = scale;
  }

  /** Returns its place among the model's spreads. */
  int place() {
    return place;
  }

  static HalfT prior(boolean hasKitchen) {
    double[] scales = new double[hasKitchen ? values().length : values().length - 1];
    for (Spread spread : values()) {
      if (spread.place < scales.length) {
        scales[spread.place] = spread.scale;
      }
    }
    return new HalfT(scales);
  }
}
