package rindward.controller.daemon;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.hardware.Probe;

/**
 * Which wireless probes are running out of battery, by what they say themselves. {@link #look} is
 * for one thread; the findings are for any.
 */
final class BatteryLevels {
  /** Judgement: some weeks are left, and a cold night takes more than a warm one. */
  private static final int LOW_MILLI_PCT = 20_000;

  /** A battery that has warmed up again is still an old one; a new one says more than this. */
  private static final int FRESH_MILLI_PCT = 50_000;

  private final List<Probe> probes;
  private volatile Set<Finding> findings = Set.of();

  BatteryLevels(List<Probe> probes) {
    this.probes = List.copyOf(probes);
  }

  /** Asks every probe what it last said; one that says nothing stays as it was. */
  void look() {
    Set<Finding> low = new HashSet<>();
    for (Probe probe : probes) {
      Finding finding = new Finding(AlarmKind.BATTERY_LOW, probe.name());
      OptionalInt charge = probe.batteryMilliPct();
      boolean wasLow = findings.contains(finding);
      boolean isLow =
          charge.isEmpty()
              ? wasLow
              : charge.getAsInt() < (wasLow ? FRESH_MILLI_PCT : LOW_MILLI_PCT);
      if (isLow) {
        low.add(finding);
      }
    }
    findings = Set.copyOf(low);
  }

  /** Returns what was found at the last look. */
  Set<Finding> findings() {
    return findings;
  }
}
