package rindward.controller.journal;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Days;

/**
 * What tells how long after fruit set a fruit was picked. Where the sign names no date, the days it
 * usually stands for are common practice: nobody seems to have published them.
 */
public enum RipenessSign {
  /** The day of fruit set was written on a tag: the best there is. */
  TAGGED_SET("tagged-set", null),
  /** Days since the first female flower: no fruit is older. */
  FIRST_FLOWER("first-flower", null),
  /** Worked out from the day of transplanting. */
  TRANSPLANTED("transplanted", null),
  SEEDS_FULL("seeds-full", new Days(45, 80)),
  SEEDS_FLAT("seeds-flat", new Days(15, 40)),
  FLESH_DENSE("flesh-dense", new Days(40, 80)),
  FLESH_WATERY("flesh-watery", new Days(15, 45)),
  STEM_CORKY("stem-corky", new Days(40, 80)),
  STEM_GREEN("stem-green", new Days(15, 50)),
  GROUND_SPOT_COLOURED("ground-spot-coloured", new Days(40, 80)),
  RIND_RESISTS("rind-resists", new Days(35, 80)),
  RIND_DENTS("rind-dents", new Days(10, 35)),
  /** The vines died of disease or frost before the fruit was done. */
  VINES_DEAD("vines-dead", new Days(15, 80));

  private final String word;
  private final Optional<Days> usual;

  RipenessSign(String word, @Nullable Days usual) {
    this.word = word;
    this.usual = Optional.ofNullable(usual);
  }

  /** Returns the days after fruit set it usually stands for; empty where they must be said. */
  public Optional<Days> usual() {
    return usual;
  }

  /** Tells whether it is seen only when the fruit is cut. */
  public boolean isSeenInside() {
    return switch (this) {
      case SEEDS_FULL, SEEDS_FLAT, FLESH_DENSE, FLESH_WATERY -> true;
      default -> false;
    };
  }

  /** Tells whether it shows a fruit that never filled. */
  public boolean isUnripeInside() {
    return this == SEEDS_FLAT || this == FLESH_WATERY;
  }

  /** Tells whether the days come from dates that somebody wrote down. */
  public boolean isDated() {
    return this == TAGGED_SET || this == TRANSPLANTED;
  }

  /** Returns the word used in commands, files and sentences. */
  @Override
  public String toString() {
    return word;
  }
}
