package rindward.controller.command.shed;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rindward.controller.command.base.IntervalArgument;
import rindward.controller.command.base.IntervalArgument.Interval;
import rindward.controller.command.base.Units;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.settings.CropGuideReader;
import rindward.hardware.Thousandths;

/** The options that say which air is asked for: by a crop and its stage, by numbers, or both. */
final class RangeOptions {
  /** What the crop is in the room for. */
  enum Stage {
    CURE,
    KEEP
  }

  @Option(
      names = "--crop",
      paramLabel = "TYPE",
      description = "Take the range of this type in the crop guide, such as butternut.")
  private @Nullable String crop;

  @Option(
      names = "--stage",
      paramLabel = "cure|keep",
      defaultValue = "cure",
      description = "With --crop, whether it cures or keeps; if not given ${DEFAULT-VALUE}.")
  private Stage stage = Stage.CURE;

  @Option(
      names = "--temperature",
      paramLabel = "LOW..HIGH",
      converter = IntervalArgument.class,
      description = "Range of temperature, both ends inside; goes before that of --crop.")
  private @Nullable Interval temperature;

  @Option(
      names = "--humidity",
      paramLabel = "LOW..HIGH",
      converter = IntervalArgument.class,
      description =
          "Range of relative humidity in percent, both ends inside; goes before that of --crop.")
  private @Nullable Interval humidity;

  /**
   * Returns the type asked for; empty where only numbers were given.
   *
   * @throws IllegalArgumentException with one sentence, if there is no such type
   */
  Optional<Crop> crop() {
    if (crop == null) {
      return Optional.empty();
    }
    String name = crop;
    CropGuide guide = CropGuideReader.builtIn();
    return Optional.of(guide.crop(name).orElseThrow(() -> unknown(name, guide)));
  }

  /**
   * Returns the range asked for.
   *
   * @param type what {@link #crop()} returned
   * @throws IllegalArgumentException with one sentence, if there is none
   */
  Range range(Optional<Crop> type, Units units) {
    if (temperature != null && humidity != null) {
      return new Range(temperature(temperature, units), humidity(humidity));
    }
    Range guided = type.orElseThrow(this::incomplete).keeping().range();
    if (stage == Stage.CURE) {
      guided = curing(type.get());
    }
    return new Range(
        temperature == null ? guided.temperature() : temperature(temperature, units),
        humidity == null ? guided.humidity() : humidity(humidity));
  }

  private static Range curing(Crop crop) {
    return crop.cure()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "--stage was cure but it must be keep for "
                        + crop.key()
                        + crop.noCure().map(why -> ": " + why.value()).orElse("")))
        .target();
  }

  private static Limits temperature(Interval given, Units units) {
    return new Limits(
        Thousandths.of(units.toCelsius(given.low())),
        Thousandths.of(units.toCelsius(given.high())));
  }

  private static Limits humidity(Interval given) {
    return new Limits(Thousandths.of(given.low()), Thousandths.of(given.high()));
  }

  private IllegalArgumentException incomplete() {
    return new IllegalArgumentException(
        temperature == null
            ? "--temperature must say the range, such as 12..15, or --crop must name a type"
            : "--humidity must say the range in percent, such as 60..70, or --crop must name a"
                + " type");
  }

  private static IllegalArgumentException unknown(String name, CropGuide guide) {
    return new IllegalArgumentException(
        "--crop was '"
            + name
            + "' but it must be one of "
            + String.join(", ", guide.keys())
            + guide.nearest(name).map(near -> "; did you mean '" + near + "'?").orElse(""));
  }
}
