package rindward.controller.alarm;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import rindward.hardware.OutputKind;

/**
 * One row of the table: a kind of alarm, and what a grower has to know when it calls.
 *
 * @param kind which
 * @param name in a few words
 * @param priority what it asks of the grower
 * @param onDelaySeconds how long the condition must hold before it counts
 * @param offDelaySeconds how long it must be gone before it counts as gone
 * @param deadband how far a value must come back from its limit, in thousandths of the unit that it
 *     is measured in; 0 for a kind that is a plain yes or no
 * @param isLatching whether a person has to reset it after it has gone
 * @param isQuietDuringWork whether it is shelved while somebody works in the room
 * @param suppresses what follows from it and is not called about while it lasts
 * @param cause what usually lies behind it, a sentence
 * @param consequence what follows if nobody does anything, a sentence
 * @param action what to do, in words that help at 2 a.m.
 * @param actionWithout what to do instead in a room that lacks an output; the first output of the
 *     table's order that the room lacks decides
 */
public record AlarmRow(
    AlarmKind kind,
    String name,
    Priority priority,
    long onDelaySeconds,
    long offDelaySeconds,
    int deadband,
    boolean isLatching,
    boolean isQuietDuringWork,
    Set<AlarmKind> suppresses,
    String cause,
    String consequence,
    String action,
    Map<OutputKind, String> actionWithout) {
  public AlarmRow {
    suppresses = Set.copyOf(suppresses);
    actionWithout = Collections.unmodifiableMap(new LinkedHashMap<>(actionWithout));
  }

  /** Returns what to do in a room that has only these outputs. */
  public String actionWith(Set<OutputKind> outputs) {
    return actionWithout.entrySet().stream()
        .filter(variant -> !outputs.contains(variant.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(action);
  }
}
