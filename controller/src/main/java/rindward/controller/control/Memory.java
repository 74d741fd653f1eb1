package rindward.controller.control;

import java.util.EnumMap;
import java.util.Map;
import rindward.hardware.OutputKind;

/**
 * What one decision hands to the next. Not kept over a restart: then every minimum off time starts
 * anew.
 *
 * @param outputs since when each output has been as it is
 * @param startedNanos when the controller started
 */
public record Memory(Map<OutputKind, Switched> outputs, long startedNanos) {
  public Memory {
    outputs = Map.copyOf(outputs);
  }

  /**
   * An output's state and since when.
   *
   * @param sinceNanos monotonic
   */
  public record Switched(boolean on, long sinceNanos) {}

  /** Returns the memory at the start: everything off, and only just. */
  public static Memory atStart(long nowNanos) {
    return new Memory(Map.of(), nowNanos);
  }

  /** Returns an output's state. */
  public Switched switched(OutputKind kind) {
    Switched switched = outputs.get(kind);
    return switched == null ? new Switched(false, startedNanos) : switched;
  }

  /** Returns the memory after a decision. */
  Memory after(Map<OutputKind, Ruling> rulings, long nowNanos) {
    Map<OutputKind, Switched> next = new EnumMap<>(OutputKind.class);
    rulings.forEach(
        (kind, ruling) -> {
          Switched before = switched(kind);
          next.put(kind, before.on() == ruling.on() ? before : new Switched(ruling.on(), nowNanos));
        });
    return new Memory(next, startedNanos);
  }
}
