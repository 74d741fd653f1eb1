package rindward.controller.readiness;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import rindward.controller.crop.Days;
import rindward.controller.keeping.Ending;
import rindward.controller.keeping.HalfLife;
import rindward.controller.keeping.Survival;

/**
 * How long a grower's own fruits of one variety kept, in days of life at the reference temperature
 * of its type, as the guide counts them. It stands before the guide once enough fruits were lost to
 * tell a half-life, or enough were watched beyond the guide's longest life. That a life ends
 * between the loss of a quarter and of half of the fruits is common practice.
 *
 * @param days which stand for the guide's life; empty while too little was seen
 * @param isOpen whether it ended only because nobody watched longer
 * @param seen what was seen, without a full stop
 */
public record OwnLife(Optional<Days> days, boolean isOpen, String seen) {
  private static final double QUARTER_LOST = 0.75;

  /** A product of fractions may miss a quarter by the last bits of a double. */
  private static final double ROUNDING = 1e-12;

  /** With fewer fruits left under watch the curve says nothing. Common practice. */
  private static final int FEWEST_WATCHED = 3;

  /**
   * Judges what was seen.
   *
   * @param survival of fruits that were neither hurt by cold nor picked unripe, by days of life
   * @param guide what the guide says
   */
  public static OwnLife of(Survival survival, Days guide) {
    OptionalInt quarter =
        survival.steps().stream()
            .filter(step -> step.survival() <= QUARTER_LOST + ROUNDING)
            .mapToInt(step -> step.day())
            .findFirst();
    HalfLife half = survival.halfLife();
    int watched = survival.lastDayWith(FEWEST_WATCHED);
    int low = quarter.orElse(watched);
    boolean isReached = half.state() == HalfLife.State.REACHED;
    Optional<Days> days = Optional.empty();
    if (isReached) {
      days = Optional.of(new Days(low, half.day()));
    } else if (survival.isEnoughForShare()
        && half.state() == HalfLife.State.NOT_REACHED
        && watched > guide.high()) {
      days = Optional.of(new Days(Math.min(low, watched), watched));
    }
    return new OwnLife(
        days, days.isPresent() && !isReached, seen(survival, quarter, half, watched));
  }

  private static String seen(
      Survival survival, OptionalInt quarter, HalfLife half, int watchedDays) {
    String fruits =
        String.format(
            Locale.ROOT,
            "%d %s of your own, %d lost",
            survival.fruits(),
            survival.fruits() == 1 ? "fruit" : "fruits",
            survival.count(Ending.LOST));
    if (!survival.isEnoughForRate()) {
      return watchedDays == 0
          ? fruits + ", not watched for a day yet"
          : fruits + ", watched to day " + watchedDays;
    }
    return fruits
        + (quarter.isPresent() ? ": a quarter by day " + quarter.getAsInt() : "")
        + (quarter.isPresent() ? ", " : ": ")
        + half.words();
  }
}
