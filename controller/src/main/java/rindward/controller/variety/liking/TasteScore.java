package rindward.controller.variety.liking;

import java.util.Comparator;

/**
 * One score that one person gave to one fruit.
 *
 * @param type key of the type in the crop guide: only varieties of one type are compared
 * @param variety the grower's name for it
 * @param season year of the harvest
 * @param lot code of the lot
 * @param fruit name of the fruit in its lot, or of those that one cup held some of; where nobody
 *     named it, of the occasion on which it was tasted
 * @param taster who
 * @param session name of the session; empty for the kitchen
 * @param go which go of the session, from 0
 * @param isUnripe whether the fruit was seen to be unripe when it was cut
 * @param value on the scale of what was asked
 */
public record TasteScore(
    String type,
    String variety,
    int season,
    String lot,
    String fruit,
    String taster,
    String session,
    int go,
    Manner manner,
    boolean isUnripe,
    double value) {
  /** Stands between the names of fruits that were in one cup. */
  public static final String AND = ", ";

  /** One order for all, so that the order of entry makes no difference to any digit. */
  static final Comparator<TasteScore> ORDER =
      Comparator.comparing(TasteScore::type)
          .thenComparing(TasteScore::variety)
          .thenComparing(TasteScore::lot)
          .thenComparing(TasteScore::fruit)
          .thenComparing(TasteScore::session)
          .thenComparing(TasteScore::go)
          .thenComparing(TasteScore::taster)
          .thenComparing(TasteScore::manner)
          .thenComparing(TasteScore::isUnripe)
          .thenComparing(TasteScore::season)
          .thenComparing(TasteScore::value);
}
