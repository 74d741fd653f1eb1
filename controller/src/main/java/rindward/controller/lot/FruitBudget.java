package rindward.controller.lot;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import rindward.controller.journal.FieldErrors;
import rindward.controller.journal.Purpose;

/**
 * Where the fruits of a lot are. {@code sound + used + lost + unaccounted = harvested}, always.
 *
 * @param harvested how many came in
 * @param sound still there, as far as anybody knows; those set aside included
 * @param used eaten, sold or given a use while they were sound
 * @param lost culled, those included that were eaten because they were failing
 * @param unaccounted missing at a recount; below zero if more were found than the books said
 * @param reserved set aside, by purpose; nothing offers these to the kitchen
 */
public record FruitBudget(
    int harvested, int sound, int used, int lost, int unaccounted, Map<Purpose, Integer> reserved) {

  public FruitBudget {
    if (sound + used + lost + unaccounted != harvested) {
      throw new IllegalArgumentException(
          "fruits were "
              + sound
              + ", "
              + used
              + ", "
              + lost
              + ", "
              + unaccounted
              + " of "
              + harvested
              + " but they must add up");
    }
    Map<Purpose, Integer> copy = new EnumMap<>(Purpose.class);
    copy.putAll(reserved);
    reserved = Collections.unmodifiableMap(copy);
  }

  /** Returns the budget of a lot that has just come in. */
  public static FruitBudget of(int harvested) {
    return new FruitBudget(harvested, harvested, 0, 0, 0, Map.of());
  }

  /** Returns how many are set aside for anything. */
  public int setAside() {
    return reserved.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** Returns how many sound fruits nobody has set aside; never below zero. */
  public int free() {
    return Math.max(0, sound - setAside());
  }

  /** Returns how many sound fruits may be used for a purpose. */
  public int freeFor(Purpose purpose) {
    return Math.min(Math.max(0, sound), free() + reserved.getOrDefault(purpose, 0));
  }

  /** Returns why so many fruits of a lot may not go to a purpose, or nothing. */
  Optional<String> refusal(String lot, Purpose purpose, int count) {
    int free = freeFor(purpose);
    return count <= free
        ? Optional.empty()
        : FieldErrors.wrong(
            "count",
            count,
            "of lot "
                + lot
                + " only "
                + free
                + " may go to "
                + purpose
                + ": set aside are "
                + reserved);
  }

  FruitBudget culled(int count) {
    return new FruitBudget(harvested, sound - count, used, lost + count, unaccounted, reserved);
  }

  FruitBudget usedFor(Purpose purpose, int count) {
    int left = Math.max(0, reserved.getOrDefault(purpose, 0) - count);
    return new FruitBudget(
        harvested, sound - count, used + count, lost, unaccounted, with(purpose, left));
  }

  FruitBudget recounted(int count) {
    return new FruitBudget(harvested, count, used, lost, unaccounted + sound - count, reserved);
  }

  FruitBudget reserved(Purpose purpose, int count) {
    return new FruitBudget(harvested, sound, used, lost, unaccounted, with(purpose, count));
  }

  private Map<Purpose, Integer> with(Purpose purpose, int count) {
    Map<Purpose, Integer> changed = new EnumMap<>(Purpose.class);
    changed.putAll(reserved);
    if (count == 0) {
      changed.remove(purpose);
    } else {
      changed.put(purpose, count);
    }
    return changed;
  }
}
