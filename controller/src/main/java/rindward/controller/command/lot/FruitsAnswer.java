package rindward.controller.command.lot;

import java.util.Map;
import java.util.TreeMap;
import rindward.controller.lot.FruitBudget;

/**
 * Where the fruits of a lot are, as {@code --json} shows it.
 *
 * @param sound those set aside included
 * @param free sound and not set aside
 * @param reserved set aside, by purpose
 */
record FruitsAnswer(
    int harvested,
    int sound,
    int free,
    int used,
    int lost,
    int unaccounted,
    Map<String, Integer> reserved) {
  static FruitsAnswer of(FruitBudget fruits) {
    Map<String, Integer> reserved = new TreeMap<>();
    fruits.reserved().forEach((purpose, count) -> reserved.put(purpose.toString(), count));
    return new FruitsAnswer(
        fruits.harvested(),
        fruits.sound(),
        fruits.free(),
        fruits.used(),
        fruits.lost(),
        fruits.unaccounted(),
        reserved);
  }
}
