package rindward.hardware.shed;

import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The faults that are on at present. */
final class Faults {
  private final Set<ShedFault> active = new LinkedHashSet<>();

  void add(ShedFault fault) {
    active.add(fault);
  }

  void remove(ShedFault fault) {
    active.remove(fault);
  }

  void clear() {
    active.clear();
  }

  Set<ShedFault> active() {
    return Set.copyOf(active);
  }

  boolean has(ShedFault.Kind kind, String target) {
    return find(kind, target) != null;
  }

  /** Returns the fault's amount, or 0 without it. */
  double amount(ShedFault.Kind kind, String target) {
    ShedFault fault = find(kind, target);
    return fault == null ? 0 : fault.amount();
  }

  /** Returns the name of the probe that hangs where this one should. */
  String standIn(String probe) {
    for (ShedFault fault : active) {
      if (fault.kind() == ShedFault.Kind.PROBES_SWAPPED) {
        if (fault.target().equals(probe)) {
          return fault.other();
        }
        if (fault.other().equals(probe)) {
          return fault.target();
        }
      }
    }
    return probe;
  }

  @Nullable ShedFault find(ShedFault.Kind kind, String target) {
    if (active.isEmpty()) {
      return null; // As good as always, and asked thousands of times in a simulated hour.
    }
    for (ShedFault fault : active) {
      if (fault.kind() == kind && fault.target().equals(target)) {
        return fault;
      }
    }
    return null;
  }
}
