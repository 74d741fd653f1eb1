package rindward.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import rindward.controller.Any;
import rindward.controller.Seeded;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.hardware.Thousandths;

/**
 * What must hold for every history there can be. The arithmetic under test is compared with a
 * counter that asks, millisecond by millisecond, what was known.
 */
class LedgerPropertyTest {
  private static final Range RANGE = new Range(new Limits(100, 140), new Limits(500, 700));
  private static final long END = 400;

  /** One sample, small enough that every millisecond can be asked. */
  record Sample(long at, int temperature, int humidity) {}

  /** Up to thirty samples at different instants; of twenty values one is missing. */
  private static List<Sample> samples(Any any) {
    Map<Long, Sample> samples = new LinkedHashMap<>();
    for (Sample sample : any.list(0, 30, () -> sample(any))) {
      samples.putIfAbsent(sample.at(), sample);
    }
    return List.copyOf(samples.values());
  }

  private static Sample sample(Any any) {
    return new Sample(
        any.longBetween(-50, END + 50),
        any.oneIn(20) ? none() : any.intBetween(80, 160),
        any.oneIn(20) ? none() : any.intBetween(450, 750));
  }

  private static Accuracy accuracy(Any any) {
    return new Accuracy(any.intBetween(0, 30), any.intBetween(0, 150));
  }

  @Seeded
  void agreesWithAskingEveryMillisecond(Any any) {
    List<Sample> samples = samples(any);
    Accuracy accuracy = accuracy(any);
    int hold = any.intBetween(1, 60);
    long from = any.longBetween(0, END);
    Account counted = count(samples, accuracy, from, END, hold);

    assertThat(counted).isEqualTo(askEveryMillisecond(samples, accuracy, from, END, hold));
  }

  @Seeded
  void partsAlwaysSumToTheElapsedTime(Any any) {
    List<Sample> samples = samples(any);
    Accuracy accuracy = accuracy(any);
    int hold = any.intBetween(1, 60);
    Account account = count(samples, accuracy, 0, END, hold);

    assertThat(account.elapsedMillis()).isEqualTo(END);
    assertThat(account.inRange().measured() + account.outOfRangeMillis() + account.unknownMillis())
        .isEqualTo(END);
    assertThat(account.outOfRangeMillis()).isNotNegative();
  }

  @Seeded
  void splittingAnywhereChangesNothing(Any any) {
    List<Sample> samples = samples(any);
    Accuracy accuracy = accuracy(any);
    int hold = any.intBetween(1, 60);
    long cut = any.longBetween(0, END);
    Account whole = count(samples, accuracy, 0, END, hold);

    Account parts =
        count(samples, accuracy, 0, cut, hold).plus(count(samples, accuracy, cut, END, hold));

    assertThat(parts).isEqualTo(whole);
  }

  @Seeded
  void evenRunsCountAsTheirSingleSamples(Any any) {
    int step = any.intBetween(1, 40);
    int hold = any.intBetween(1, 60);
    int count = any.intBetween(1, 20);
    long start = any.longBetween(-60, 100);
    long from = any.longBetween(0, END);
    long seed = any.anyLong();
    Random values = new Random(seed);
    int[] temperature = values.ints(count, 80, 160).toArray();
    int[] humidity = values.ints(count, 450, 750).toArray();
    List<Sample> single = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      single.add(new Sample(start + (long) i * step, temperature[i], humidity[i]));
    }
    Accuracy accuracy = new Accuracy(5, 20);

    Account run =
        RangeCounter.account(
            (f, t, visit) -> visit.accept(new Run(start, step, count, temperature, humidity)),
            RANGE,
            accuracy,
            from,
            END,
            hold);

    assertThat(run).isEqualTo(count(single, accuracy, from, END, hold));
  }

  @Seeded
  void aGapNeverAddsCredit(Any any) {
    List<Sample> samples = samples(any);
    Accuracy accuracy = accuracy(any);
    int hold = any.intBetween(1, 60);
    int lost = any.intBetween(0, 29);
    List<Sample> fewer = new ArrayList<>(samples);
    if (lost < fewer.size()) {
      Sample silenced = fewer.get(lost);
      fewer.set(lost, new Sample(silenced.at(), none(), none()));
    }

    Account with = count(samples, accuracy, 0, END, hold);
    Account without = count(fewer, accuracy, 0, END, hold);

    assertThat(without.inRange().possible()).isLessThanOrEqualTo(with.inRange().possible());
    assertThat(without.inRange().measured()).isLessThanOrEqualTo(with.inRange().measured());
    assertThat(without.unknownMillis()).isGreaterThanOrEqualTo(with.unknownMillis());
  }

  private static Account count(
      List<Sample> samples, Accuracy accuracy, long from, long to, long hold) {
    return RangeCounter.account(history(samples), RANGE, accuracy, from, to, hold);
  }

  private static History history(List<Sample> samples) {
    List<Sample> sorted = sorted(samples);
    return (from, to, visit) -> {
      for (Sample s : sorted) {
        visit.accept(Run.of(s.at(), s.temperature(), s.humidity()));
      }
    };
  }

  private static List<Sample> sorted(List<Sample> samples) {
    List<Sample> sorted = new ArrayList<>(samples);
    Collections.sort(sorted, (a, b) -> Long.compare(a.at(), b.at()));
    return sorted;
  }

  private static int none() {
    return Thousandths.NONE;
  }

  /** The definition, taken literally. */
  private static Account askEveryMillisecond(
      List<Sample> samples, Accuracy accuracy, long from, long to, long hold) {
    List<Sample> sorted = sorted(samples);
    Account sum = Account.EMPTY;
    for (long now = from; now < to; now++) {
      Sample last = null;
      for (Sample s : sorted) {
        if (s.at() <= now && now < s.at() + hold) {
          last = s;
        }
        if (s.at() <= now && last != null && s.at() > last.at()) {
          last = null;
        }
      }
      sum = sum.plus(last == null ? Account.unknown(1) : oneMillisecond(last, accuracy));
    }
    return sum;
  }

  private static Account oneMillisecond(Sample s, Accuracy a) {
    boolean knowsT = s.temperature() != none();
    boolean knowsH = s.humidity() != none();
    BoundedTotal cold =
        below(knowsT, s.temperature(), RANGE.temperature().low(), a.temperatureMilliC());
    BoundedTotal warm =
        above(knowsT, s.temperature(), RANGE.temperature().high(), a.temperatureMilliC());
    BoundedTotal dry = below(knowsH, s.humidity(), RANGE.humidity().low(), a.humidityMilliPct());
    BoundedTotal damp = above(knowsH, s.humidity(), RANGE.humidity().high(), a.humidityMilliPct());
    boolean out = cold.measured() + warm.measured() + dry.measured() + damp.measured() > 0;
    boolean known = knowsT && knowsH;
    BoundedTotal in =
        !known
            ? BoundedTotal.ZERO
            : new BoundedTotal(
                one(cold.possible() + warm.possible() + dry.possible() + damp.possible() == 0),
                one(!out),
                one(cold.certain() + warm.certain() + dry.certain() + damp.certain() == 0));
    return new Account(1, one(!known && !out), in, cold, warm, dry, damp);
  }

  private static BoundedTotal below(boolean known, int v, int low, int a) {
    return known
        ? new BoundedTotal(one(v < low - a), one(v < low), one(v < low + a))
        : BoundedTotal.ZERO;
  }

  private static BoundedTotal above(boolean known, int v, int high, int a) {
    return known
        ? new BoundedTotal(one(v > high + a), one(v > high), one(v > high - a))
        : BoundedTotal.ZERO;
  }

  private static long one(boolean condition) {
    return condition ? 1 : 0;
  }
}
