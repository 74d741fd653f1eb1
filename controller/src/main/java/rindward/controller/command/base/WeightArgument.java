package rindward.controller.command.base;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code 1.4kg}, {@code 1400g}, {@code 3.1lb} or {@code 1.4} (kg) as grams. */
public final class WeightArgument implements ITypeConverter<Integer> {
  private static final Pattern FORM = Pattern.compile("(\\d{1,7}(?:\\.\\d{1,4})?)(kg|g|lb)?");

  /** A pound is 453.59237 g exactly (international yard and pound agreement, 1959). */
  private static final Map<String, BigDecimal> GRAMS =
      Map.of("kg", new BigDecimal(1000), "g", BigDecimal.ONE, "lb", new BigDecimal("453.59237"));

  @Override
  public Integer convert(String text) {
    Matcher form = FORM.matcher(text);
    if (form.matches()) {
      String unit = form.group(2) == null ? "kg" : form.group(2);
      BigDecimal grams =
          new BigDecimal(form.group(1)).multiply(GRAMS.getOrDefault(unit, BigDecimal.ONE));
      if (grams.compareTo(new BigDecimal(Integer.MAX_VALUE)) < 0) {
        return grams.setScale(0, RoundingMode.HALF_UP).intValueExact();
      }
    }
    throw new TypeConversionException(
        "'" + text + "' must be a weight such as 1.4kg, 1400g or 3.1lb");
  }
}
