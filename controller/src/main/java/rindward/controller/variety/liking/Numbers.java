package rindward.controller.variety.liking;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rindward.controller.mixed.Effect;

/**
 * The levels of one effect, numbered in the order of their names.
 *
 * @param <K> what names a level
 */
final class Numbers<K> {
  private final Map<K, Integer> numbers = new LinkedHashMap<>();
  private final int[] ofRow;

  /** Numbers the levels of all rows; those without one (null) stay out. */
  Numbers(List<TasteScore> rows, Function<TasteScore, @Nullable K> name) {
    ofRow = new int[rows.size()];
    for (int row = 0; row < ofRow.length; row++) {
      K key = name.apply(rows.get(row));
      ofRow[row] = key == null ? -1 : numbers.computeIfAbsent(key, k -> numbers.size());
    }
  }

  Map<K, Integer> all() {
    return numbers;
  }

  int[] ofRow() {
    return ofRow;
  }

  Effect drawn(Spread spread) {
    return Effect.of(numbers.size(), ofRow, spread.place());
  }
}
