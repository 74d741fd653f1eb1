package rindward.dashboard.lots;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One lot with its whole story. Times of an account are hours, weights grams.
 *
 * @param zone whose days are meant, as its IANA name
 * @param lot as it stands in the list
 * @param stays where it has been, in time order
 * @param accounts its time against the ranges it needed, one a stage that it has begun
 * @param weights one series a tagged fruit, and one for crates of the same count
 * @param weightSentence how fast it loses weight; null while nothing was weighed twice
 * @param survival null while its type is unknown
 * @param tastings what was tasted of it, in time order
 * @param secondFruit what to do since one of its fruits was unripe; null if there is no need
 * @param liking how its variety was liked at each age
 * @param story everything that stands about it, the latest first
 */
public record LotView(
    Instant at,
    String zone,
    LotLine lot,
    List<StayView> stays,
    List<AccountView> accounts,
    List<WeightsView> weights,
    @Nullable String weightSentence,
    @Nullable SurvivalView survival,
    List<TastingView> tastings,
    @Nullable SecondFruitView secondFruit,
    LikingView liking,
    List<EntryView> story) {

  public LotView {
    stays = List.copyOf(stays);
    accounts = List.copyOf(accounts);
    weights = List.copyOf(weights);
    tastings = List.copyOf(tastings);
    story = List.copyOf(story);
  }

  /**
   * It was in a place.
   *
   * @param to null while it is still there
   * @param measured whether the place has probes
   */
  public record StayView(String place, Instant from, @Nullable Instant to, boolean measured) {}

  /** A time in three readings; certain is at most measured, and measured at most possible. */
  public record HoursView(double certain, double measured, double possible) {}

  /**
   * Time against the range of one stage. In range, out of range and unknown add up to the elapsed
   * time; the four ways of being out of range may overlap.
   *
   * @param stage "curing" or "keeping"
   */
  public record AccountView(
      String stage,
      double elapsedHours,
      double unknownHours,
      double outOfRangeHours,
      HoursView inRange,
      HoursView tooCold,
      HoursView tooWarm,
      HoursView tooDry,
      HoursView tooDamp) {}

  /**
   * The weights of one tagged fruit, or of crates.
   *
   * @param fruit null for crates
   * @param count fruits on the scale
   */
  public record WeightsView(@Nullable String fruit, int count, List<WeightView> points) {
    public WeightsView {
      points = List.copyOf(points);
    }
  }

  /**
   * One weighing.
   *
   * @param netGrams of the fruits alone
   * @param lossPercent of the first weight of the series; below zero if it grew heavier
   */
  public record WeightView(Instant at, int netGrams, double lossPercent) {}

  /**
   * How many of its fruits are still sound.
   *
   * @param sentence what is known, in one sentence or two
   * @param lastDay up to which day since harvest it was watched
   * @param steps days on which fruits were lost; empty where there are too few fruits for a share
   */
  public record SurvivalView(String sentence, int lastDay, List<StepView> steps) {
    public SurvivalView {
      steps = List.copyOf(steps);
    }
  }

  /**
   * The share still sound after a day, 0 to 1.
   *
   * @param low lower end of the interval that holds 95 %; null where there is none
   * @param high upper end likewise
   */
  public record StepView(int day, double share, @Nullable Double low, @Nullable Double high) {}

  /**
   * It was tasted.
   *
   * @param session name of the blind session; null for a taste in the kitchen
   * @param liking on the nine-point scale; null if nobody said
   * @param words in the taster's words; may be empty
   * @param notCounted why it says nothing of the variety; null if it counts
   */
  public record TastingView(
      Instant at,
      @Nullable String session,
      @Nullable Double liking,
      String words,
      @Nullable String notCounted) {}

  /**
   * A second fruit to cook beside one of another lot, as a tasting that can be planned as it is.
   *
   * @param sentence what is proposed
   * @param ifRipe what it means if the second fruit is ripe
   * @param ifUnripe what it means if it is not
   * @param name of the tasting
   * @param samples the two lots, each with the fruit that is cut
   * @param tasters those of the last tasting; empty if there was none
   */
  public record SecondFruitView(
      String sentence,
      String ifRipe,
      String ifUnripe,
      String name,
      List<FruitView> samples,
      List<String> tasters,
      String method,
      @Nullable Double temperatureC,
      String cut,
      String doneWhen,
      @Nullable Double servedAtC,
      String part) {
    public SecondFruitView {
      samples = List.copyOf(samples);
      tasters = List.copyOf(tasters);
    }
  }

  /** A lot, and the names of the fruits that are cut of it. */
  public record FruitView(String lot, List<String> fruits) {
    public FruitView {
      fruits = List.copyOf(fruits);
    }
  }

  /**
   * One thing that was said.
   *
   * @param id by which it is corrected or taken back
   * @param at when it happened
   * @param saidAt when it was said
   * @param kind as a file of lots names it
   * @param fields what it said, by the columns of a file of lots
   * @param isCorrected whether it said something else at first
   */
  public record EntryView(
      long id,
      Instant at,
      Instant saidAt,
      String by,
      String kind,
      Map<String, String> fields,
      boolean isCorrected) {
    public EntryView {
      fields = Map.copyOf(fields);
    }
  }
}
