package rindward.controller.command.base;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code 20.5..21}: two numbers, both belonging to the inside. */
public final class IntervalArgument implements ITypeConverter<IntervalArgument.Interval> {
  private static final double LARGEST = 1000;

  /** Two numbers as given, in whatever unit the option says. */
  public record Interval(double low, double high) {}

  @Override
  public Interval convert(String text) {
    int dots = text.indexOf("..");
    if (dots > 0) {
      try {
        Interval interval =
            new Interval(
                Double.parseDouble(text.substring(0, dots)),
                Double.parseDouble(text.substring(dots + 2)));
        if (-LARGEST <= interval.low()
            && interval.low() <= interval.high()
            && interval.high() <= LARGEST) {
          return interval;
        }
      } catch (NumberFormatException e) {
        // The sentence below says all there is to say.
      }
    }
    throw new TypeConversionException(
        "'" + text + "' must be two numbers, the lower one first, such as 20.5..21");
  }
}
