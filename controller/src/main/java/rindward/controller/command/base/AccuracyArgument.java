package rindward.controller.command.base;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code 0.3,2}: how far temperature and humidity may be off, plus or minus. */
public final class AccuracyArgument implements ITypeConverter<AccuracyArgument.PlusMinus> {
  private static final double LARGEST = 100;

  /** Both as given: degrees in the units of the command, and percent. */
  public record PlusMinus(double degrees, double percent) {}

  @Override
  public PlusMinus convert(String text) {
    String[] parts = text.split(",", -1);
    if (parts.length == 2) {
      try {
        PlusMinus accuracy =
            new PlusMinus(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]));
        if (isAccuracy(accuracy.degrees()) && isAccuracy(accuracy.percent())) {
          return accuracy;
        }
      } catch (NumberFormatException e) {
        // The sentence below says all there is to say.
      }
    }
    throw new TypeConversionException(
        "'" + text + "' must be degrees and percent, neither below zero, such as 0.3,2");
  }

  private static boolean isAccuracy(double value) {
    return 0 <= value && value <= LARGEST;
  }
}
