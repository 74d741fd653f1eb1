package rindward.dashboard.lots;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One lot in the list: what it is, where it is, how far it is, and what to do with it.
 *
 * @param version what a change to it must name, as its {@code ETag} does
 * @param crop key of its type, which an entry names
 * @param cropName the type as people call it
 * @param variety may be empty
 * @param grade how ripe it looked; null if nobody said
 * @param plot where it grew; null if nobody said
 * @param cure null for a type without a cure
 * @param verdict null for a lot whose type has left the crop guide
 * @param cups what its cups can say in a tasting; null as the verdict is
 * @param eatRank its place among those to eat, from 1; null if it is not to be eaten now
 * @param tags its tagged fruits in the order in which they are weighed next
 */
public record LotLine(
    String code,
    long version,
    String crop,
    String cropName,
    String variety,
    @Nullable String grade,
    @Nullable String plot,
    String place,
    Instant harvestedAt,
    int sinceHarvestDays,
    FruitsView fruits,
    @Nullable CureView cure,
    @Nullable VerdictView verdict,
    @Nullable CupsView cups,
    @Nullable Integer eatRank,
    List<TagView> tags) {

  public LotLine {
    tags = List.copyOf(tags);
  }

  /**
   * Where its fruits are.
   *
   * @param sound those set aside included
   * @param free sound and not set aside
   * @param reserved set aside, by purpose
   */
  public record FruitsView(
      int harvested,
      int sound,
      int free,
      int used,
      int lost,
      int unaccounted,
      Map<String, Integer> reserved) {
    public FruitsView {
      reserved = Map.copyOf(reserved);
    }
  }

  /**
   * How far its cure is, 0 to 1, three times: even if every probe erred against it, as measured,
   * and if every probe erred in its favour.
   *
   * @param endedAt when its curing was over; null while it goes on
   */
  public record CureView(
      double certain, double measured, double possible, @Nullable Instant endedAt) {}

  /**
   * What to do with it, and why.
   *
   * @param state a word of our own that stays the same ("ready", "eat-first" ...)
   * @param words the same as a person reads it
   * @param phase how it eats now, or why it does not cure; null where there is nothing to say
   * @param expected what comes next; null where nothing is expected
   * @param reasons one sentence each, the weightiest first
   * @param wouldChange what would change it, in one sentence
   * @param sureness how sure it is, in words
   * @param asOf the moment for which it was asked
   */
  public record VerdictView(
      String state,
      String words,
      @Nullable String phase,
      @Nullable ExpectedView expected,
      List<String> reasons,
      String wouldChange,
      String sureness,
      Instant asOf) {
    public VerdictView {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * What cups of it can say of its variety.
   *
   * @param says "much", "unsure" or "nothing"
   * @param words why, in one sentence
   */
  public record CupsView(String says, String words) {}

  /** Something expected between two moments. */
  public record ExpectedView(String what, Instant from, Instant to) {}

  /** One tagged fruit, as it was weighed last. */
  public record TagView(String fruit, int grams, Instant at) {}
}
