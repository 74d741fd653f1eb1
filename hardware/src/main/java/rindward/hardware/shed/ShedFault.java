package rindward.hardware.shed;

/**
 * Something broken on purpose. It exists for simulated probes and relays only; a real board has no
 * such door.
 *
 * @param kind what is broken
 * @param target name of the probe, relay or room; empty for the whole board
 * @param amount how badly, in the unit that the kind names; 0 where it needs none
 * @param other the second probe of a swapped pair, else empty
 */
public record ShedFault(Kind kind, String target, double amount, String other) {

  /** What sort of thing a fault's target names. */
  public enum Hits {
    PROBE,
    RELAY,
    ROOM,
    /** The whole relay board; the target is empty. */
    BOARD
  }

  /** What can break. */
  public enum Kind {
    /** The probe does not answer. */
    PROBE_SILENT(Hits.PROBE),
    /** The probe repeats its last reading. */
    PROBE_FROZEN(Hits.PROBE),
    /** One reading in five is off by the amount, in K. */
    PROBE_JUMPS(Hits.PROBE),
    /** Temperature is off by the amount, in K. */
    PROBE_BIASED(Hits.PROBE),
    /** Humidity is off by the amount, in percent. */
    HUMIDITY_BIASED(Hits.PROBE),
    /** Humidity reads 100 percent: the probe is wet. */
    HUMIDITY_STUCK_AT_100(Hits.PROBE),
    /** Temperature reads the amount, in degrees C, whatever it is. */
    PROBE_IMPOSSIBLE(Hits.PROBE),
    /** Each of two probes hangs where the other should. */
    PROBES_SWAPPED(Hits.PROBE),
    /** An outdoor probe reads too warm by the amount, in K, in full sun (1000 W/m2). */
    PROBE_IN_SUN(Hits.PROBE),
    /** A probe reads too warm by the amount, in K, while its room's heater is on. */
    PROBE_IN_PLUME(Hits.PROBE),
    /** The output runs whatever is commanded: contact welded, flap stuck open. */
    OUTPUT_STUCK_ON(Hits.RELAY),
    /** The output does nothing: element or motor dead, flap stuck closed, tank empty or full. */
    OUTPUT_DEAD(Hits.RELAY),
    /** The room's door stands open by the amount, 0..1. */
    DOOR_OPEN(Hits.ROOM),
    /** One relay cannot be reached, as over a network; it stays as it is. */
    RELAY_LOST(Hits.RELAY),
    /** The relay board cannot be reached; its relays stay as they are. */
    BOARD_LOST(Hits.BOARD),
    /** The relays have lost their supply: all outputs are off, and nothing says so. */
    SUPPLY_LOST(Hits.BOARD);

    private final Hits hits;

    Kind(Hits hits) {
      this.hits = hits;
    }

    /** Returns what the target of such a fault names. */
    public Hits hits() {
      return hits;
    }
  }

  /** Returns a fault of one probe or relay that needs no amount. */
  public static ShedFault of(Kind kind, String target) {
    return new ShedFault(kind, target, 0, "");
  }

  /** Returns a fault of one probe, relay or room with an amount. */
  public static ShedFault of(Kind kind, String target, double amount) {
    return new ShedFault(kind, target, amount, "");
  }

  /** Returns a fault of the whole board. */
  public static ShedFault ofBoard(Kind kind) {
    return new ShedFault(kind, "", 0, "");
  }

  /** Returns two probes that were mixed up. */
  public static ShedFault swapped(String probe, String other) {
    return new ShedFault(Kind.PROBES_SWAPPED, probe, 0, other);
  }
}
