package rindward.controller.ledger;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rindward.controller.crop.Chilling;
import rindward.controller.crop.Chilling.Dose;
import rindward.controller.crop.Chilling.Harm;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Crop;
import rindward.hardware.Thousandths;

/**
 * Follows the temperature of a lot's fruit through the air it was in, and adds up the cold. After a
 * gap longer than the fruit's own lag, the fruit is taken to be as warm as the air. Takes the
 * stretches of a life in order; not thread-safe.
 */
public final class ColdCounter implements SampleHold.Counter {
  private static final long DAY_MILLIS = 86_400_000;

  private final double lagMillis;
  private final int thresholdMilliC;
  private final int freezingMilliC;
  private final Optional<InjuryRate> injuryRate;
  private final List<Dose> shortening;
  private final long[] shorteningMillis;

  private double fruitMilliC = Double.NaN;
  private long gapMillis;
  private long stepMillis;
  private double stay;
  private long airBelowMillis;
  private long fruitBelowMillis;
  private long frozenMillis;
  private long injury;
  private int coldestMilliC = Integer.MAX_VALUE;
  private long lastBelowMillis = Long.MIN_VALUE;

  /**
   * @param fruitGrams mean weight of one fruit; what the type usually weighs if empty
   */
  public ColdCounter(Crop crop, Optional<Integer> fruitGrams) {
    Optional<Chilling> chilling = crop.keeping().chilling();
    this.lagMillis = FruitLag.millis(Math.max(1, fruitGrams.orElse(FruitLag.usualGrams(crop))));
    this.thresholdMilliC = chilling.map(c -> c.threshold().value()).orElse(Integer.MIN_VALUE);
    this.freezingMilliC = crop.keeping().freezing().value();
    this.injuryRate = chilling.map(InjuryRate::new);
    this.shortening =
        chilling.map(Chilling::doses).orElse(List.of()).stream()
            .map(Cited::value)
            .filter(dose -> dose.harm() == Harm.SHORTENS)
            .toList();
    this.shorteningMillis = new long[shortening.size()];
  }

  @Override
  public void held(
      long fromMillis,
      long heldMillis,
      int[] temperatureMilliC,
      int[] humidityMilliPct,
      int offset,
      int count) {
    if (heldMillis != stepMillis) {
      stepMillis = heldMillis;
      stay = Math.exp(-heldMillis / lagMillis);
    }
    for (int i = offset; i < offset + count; i++) {
      int air = temperatureMilliC[i];
      if (air == Thousandths.NONE) {
        unknown(fromMillis, heldMillis);
      } else {
        follow(air);
        add(fromMillis + heldMillis * (i - offset), heldMillis, air);
      }
    }
  }

  @Override
  public void unknown(long fromMillis, long millis) {
    gapMillis += millis;
  }

  /** Returns the cold so far. */
  public Cold cold() {
    return new Cold(
        airBelowMillis,
        fruitBelowMillis,
        coldestMilliC == Integer.MAX_VALUE ? Thousandths.NONE : coldestMilliC,
        frozenMillis,
        injury,
        injuryRate.map(rate -> injury > 0 && injury >= rate.enough()).orElse(false),
        IntStream.range(0, shortening.size())
            .filter(i -> shorteningMillis[i] >= shortening.get(i).days() * DAY_MILLIS)
            .mapToObj(shortening::get)
            .toList(),
        lastBelowMillis == Long.MIN_VALUE ? null : Instant.ofEpochMilli(lastBelowMillis));
  }

  private void follow(int air) {
    if (Double.isNaN(fruitMilliC) || gapMillis > lagMillis) {
      fruitMilliC = air;
    } else {
      fruitMilliC = air + (fruitMilliC - air) * stay;
    }
    gapMillis = 0;
  }

  private void add(long atMillis, long heldMillis, int air) {
    int fruit = Math.toIntExact(Math.round(fruitMilliC));
    coldestMilliC = Math.min(coldestMilliC, fruit);
    airBelowMillis += air < thresholdMilliC ? heldMillis : 0;
    frozenMillis += fruit <= freezingMilliC ? heldMillis : 0;
    if (fruit < thresholdMilliC) {
      fruitBelowMillis += heldMillis;
      lastBelowMillis = atMillis + heldMillis;
      injury += injuryRate.map(rate -> rate.femtoPerMilli(fruit)).orElse(0L) * heldMillis;
    }
    for (int i = 0; i < shorteningMillis.length; i++) {
      shorteningMillis[i] += fruit <= shortening.get(i).temperatureMilliC() ? heldMillis : 0;
    }
  }
}
