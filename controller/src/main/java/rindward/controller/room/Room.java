package rindward.controller.room;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Accuracy;
import rindward.hardware.OutputKind;

/**
 * One room as the settings describe it.
 *
 * @param name its name, also a place a lot can be in
 * @param purpose what it is used for
 * @param range the air it should have
 * @param outputs what it can switch, by kind and in the order of the kinds; any subset
 * @param accuracy the accuracy of its least accurate probe
 * @param observeOnly whether its outputs stay off, whatever is decided
 */
public record Room(
    String name,
    Purpose purpose,
    Range range,
    Map<OutputKind, Output> outputs,
    Accuracy accuracy,
    boolean observeOnly) {

  public Room {
    outputs = Collections.unmodifiableMap(new TreeMap<>(outputs));
  }

  /** Tells whether the room has an output of that kind. */
  public boolean has(OutputKind kind) {
    return outputs.containsKey(kind);
  }
}
