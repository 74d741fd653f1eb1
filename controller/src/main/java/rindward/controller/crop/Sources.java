package rindward.controller.crop;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the guide's source keys stand for. Three keys stand for no publication: two mark a number
 * that has none, one marks a number the grower set.
 *
 * @param titles full title by key; does not hold the marks
 */
public record Sources(Map<String, String> titles) {
  /** Marks a number growers commonly use and nobody seems to have published. */
  public static final String COMMON_PRACTICE = "common practice";

  /** Marks a number written down from memory and not found again. */
  public static final String FROM_MEMORY = "from memory";

  /** Marks a number from the grower's own settings. */
  public static final String OWN = "own settings";

  private static final Map<String, String> MARKS =
      Map.of(
          COMMON_PRACTICE, "Common practice, no published source",
          FROM_MEMORY, "From memory, not found in a source",
          OWN, "Set by the grower");

  public Sources {
    titles = Map.copyOf(titles);
  }

  /** Returns what a key stands for, a mark included; empty for an unknown key. */
  public Optional<String> title(String key) {
    return Optional.ofNullable(MARKS.getOrDefault(key, titles.get(key)));
  }

  /** Returns the key of a publication that was probably meant by an unknown one. */
  public Optional<String> nearest(String key) {
    return Nearest.to(key, titles.keySet());
  }

  /** Returns these sources and more; where a key is in both, {@code more} counts. */
  public Sources with(Map<String, String> more) {
    Map<String, String> all = new HashMap<>(titles);
    all.putAll(more);
    return new Sources(all);
  }
}
