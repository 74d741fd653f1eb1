package rindward.controller.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.hardware.Reading;

/** Watches the probes of one place. For the control thread. */
final class ProbeFactCollector {
  /** Air in one shed room differs by less, corner and ceiling included (judgement). */
  private static final int DISPUTE_MILLI_K = 4_000;

  private final Map<String, FrozenProbeDetector> probes = new LinkedHashMap<>();
  private boolean isBlind;

  ProbeFactCollector(List<String> names) {
    names.forEach(name -> probes.put(name, new FrozenProbeDetector()));
  }

  /**
   * Takes in one tick and adds what it finds.
   *
   * @param latestOf the latest of a probe
   * @param isRunning whether anything is commanded on that changes the air here
   * @param isHeating whether the heater is
   */
  void look(
      Function<String, ProbeReading> latestOf,
      boolean isRunning,
      boolean isHeating,
      long nanos,
      Set<Finding> findings) {
    int lowest = Integer.MAX_VALUE;
    int highest = Integer.MIN_VALUE;
    List<String> implausible = new ArrayList<>(0);
    isBlind = true;
    for (Map.Entry<String, FrozenProbeDetector> probe : probes.entrySet()) {
      ProbeReading known = latestOf.apply(probe.getKey());
      Reading reading = known.reading();
      if (reading == null || known.isSilent(nanos)) {
        findings.add(new Finding(AlarmKind.PROBE_SILENT, probe.getKey()));
        continue;
      }
      probe.getValue().tick(nanos / 1_000_000_000L, reading, isRunning, isHeating);
      boolean isFrozen = probe.getValue().isFrozen();
      if (isFrozen) {
        findings.add(new Finding(AlarmKind.PROBE_FROZEN, probe.getKey()));
      }
      if (!Picture.isPlausible(reading)) {
        implausible.add(probe.getKey());
      } else if (known.place() != ProbePlace.PULP) {
        lowest = Math.min(lowest, reading.temperatureMilliC());
        highest = Math.max(highest, reading.temperatureMilliC());
        isBlind &= isFrozen;
      }
    }
    implausible.forEach(name -> findings.add(new Finding(AlarmKind.PROBES_DISPUTED, name)));
    if (lowest < highest && highest - lowest > DISPUTE_MILLI_K) {
      findings.add(new Finding(AlarmKind.PROBES_DISPUTED, ""));
    }
  }

  /** Tells whether no probe of the air here could be believed in the last tick. */
  boolean isBlind() {
    return isBlind;
  }
}
