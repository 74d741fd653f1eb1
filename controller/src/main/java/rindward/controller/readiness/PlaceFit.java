package rindward.controller.readiness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rindward.controller.crop.Aging;
import rindward.controller.crop.Crop;
import rindward.controller.crop.Days;
import rindward.controller.crop.Keeping;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;

/** How a type of crop fits the air a place is meant to have; told once, at the move. */
public final class PlaceFit {
  /** No heater and probe hold less (judgement). */
  private static final int LEAST_WIDTH_MILLI_C = 1_500;

  private PlaceFit() {}

  /**
   * Returns what the place will do to the crop, in one or two sentences; empty if it suits it.
   *
   * @param air what the place is meant to have
   * @param isCuring whether the lot has still to cure, and so may be warm
   */
  public static Optional<String> misfit(Crop crop, Range air, boolean isCuring) {
    boolean cures = isCuring && crop.cure().isPresent();
    if (cures && overlaps(crop.cure().orElseThrow().temperature().value(), air.temperature())) {
      return Optional.empty();
    }
    Keeping keeping = crop.keeping();
    List<String> sentences = new ArrayList<>();
    temperature(crop, keeping, air.temperature().middle()).ifPresent(sentences::add);
    humidity(keeping, air.humidity().middle()).ifPresent(sentences::add);
    return sentences.isEmpty()
        ? Optional.empty()
        : Optional.of(name(crop) + ": " + String.join(" ", sentences));
  }

  /**
   * Returns what to expect where the place and the crop agree on a range that no room can hold;
   * empty if what they agree on is wide enough, or if they do not agree at all and it is a misfit.
   *
   * @param accuracyMilliC how good the place's probe is
   */
  public static Optional<String> tooNarrow(Crop crop, Range air, int accuracyMilliC) {
    Limits best = crop.keeping().temperature().value();
    int low = Math.max(best.low(), air.temperature().low());
    int high = Math.min(best.high(), air.temperature().high());
    if (high < low || high - low >= Math.max(LEAST_WIDTH_MILLI_C, 2 * accuracyMilliC)) {
      return Optional.empty();
    }
    return Optional.of(
        name(crop)
            + ": what suits both it and this place, "
            + degrees(low)
            + " to "
            + degrees(high)
            + " C, is narrower than a room can hold; expect hours outside it.");
  }

  private static Optional<String> temperature(Crop crop, Keeping keeping, int t) {
    Limits best = keeping.temperature().value();
    int threshold =
        keeping.chilling().map(c -> c.threshold().value()).orElse(keeping.freezing().value());
    if (t < threshold) {
      return Optional.of(
          degrees(t) + " C is too cold: it is harmed below " + degrees(threshold) + " C.");
    }
    if (t <= best.high()) {
      return Optional.empty();
    }
    String noCure = crop.noCure().map(c -> " " + c.value()).orElse("");
    return Optional.of(
        degrees(t)
            + (t <= keeping.upper().value() ? " C is a little warm" : " C is too warm")
            + " (best "
            + degrees(best.low())
            + " to "
            + degrees(best.high())
            + " C): expect "
            + shortened(keeping, t)
            + "."
            + (t > keeping.upper().value() ? noCure : ""));
  }

  private static String shortened(Keeping keeping, int t) {
    Days life = keeping.life().value();
    int rate = Math.max(1, keeping.agingRate(t));
    return days(life.low(), rate)
        + " to "
        + days(life.high(), rate)
        + " days instead of "
        + life.low()
        + " to "
        + life.high();
  }

  private static long days(int days, int rate) {
    return (long) days * Aging.REFERENCE / rate;
  }

  private static Optional<String> humidity(Keeping keeping, int humidity) {
    Limits best = keeping.humidity().value();
    if (humidity > keeping.rotAbove().value()) {
      return Optional.of("At " + humidity / 1000 + " % rot threatens.");
    }
    if (best.contains(humidity)) {
      return Optional.empty();
    }
    return Optional.of(
        humidity < best.low()
            ? "At "
                + humidity / 1000
                + " % it dries out and loses weight (best "
                + percent(best)
                + ")."
            : "At " + humidity / 1000 + " % it is damper than best (" + percent(best) + ").");
  }

  private static String percent(Limits limits) {
    return limits.low() / 1000 + " to " + limits.high() / 1000 + " %";
  }

  private static boolean overlaps(Limits a, Limits b) {
    return a.low() <= b.high() && b.low() <= a.high();
  }

  private static String degrees(int milliC) {
    return String.format(Locale.ROOT, "%.1f", milliC / 1000.0).replace(".0", "");
  }

  private static String name(Crop crop) {
    return Character.toUpperCase(crop.name().charAt(0)) + crop.name().substring(1);
  }
}
