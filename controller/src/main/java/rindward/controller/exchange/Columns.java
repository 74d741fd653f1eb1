package rindward.controller.exchange;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which columns of a recording are used.
 *
 * @param time when the row was taken
 * @param temperature air temperature
 * @param humidity relative humidity in percent; null for a logger that has none
 */
public record Columns(Column time, Column temperature, @Nullable Column humidity) {
  private static final String FORM =
      " but it must be like time=2,temperature=5,humidity=6 or time=Date,temperature=Temp";

  /** Reads {@code time=2,temperature=5,humidity=6}; header names may contain commas. */
  public static Columns parse(String text) {
    Map<String, Column> found = new LinkedHashMap<>();
    for (String part : text.split(",(?=\\s*(?:time|temperature|humidity)\\s*=)", -1)) {
      int equals = part.indexOf('=');
      String key = equals < 0 ? part : part.substring(0, equals).strip();
      boolean known = key.equals("time") || key.equals("temperature") || key.equals("humidity");
      if (!known || found.containsKey(key)) {
        throw new IllegalArgumentException("columns was '" + text + "'" + FORM);
      }
      found.put(key, new Column(part.substring(equals + 1)));
    }
    Column time = found.get("time");
    Column temperature = found.get("temperature");
    if (time == null || temperature == null) {
      throw new IllegalArgumentException("columns was '" + text + "'" + FORM);
    }
    return new Columns(time, temperature, found.get("humidity"));
  }
}
