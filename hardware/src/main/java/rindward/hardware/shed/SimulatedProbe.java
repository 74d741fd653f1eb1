package rindward.hardware.shed;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

/** A probe of the simulated shed. */
final class SimulatedProbe implements Probe {
  private final SimulatedShed shed;
  final ProbePlan plan;
  final ProbeSensor sensor;
  private @Nullable Reading last;

  SimulatedProbe(SimulatedShed shed, ProbePlan plan, long seed) {
    this.shed = shed;
    this.plan = plan;
    sensor = new ProbeSensor(plan.errors(), seed);
  }

  @Override
  public String name() {
    return plan.name();
  }

  @Override
  public Reading read() throws IOException {
    return shed.read(this);
  }

  /** Reads through a sensor, its own unless swapped, and through the faults. */
  Reading read(ProbeSensor through, Faults faults, double sunWPerM2, boolean heaterOn)
      throws IOException {
    if (faults.has(ShedFault.Kind.PROBE_SILENT, name())) {
      throw new IOException("probe " + name() + " does not answer");
    }
    if (last != null && faults.has(ShedFault.Kind.PROBE_FROZEN, name())) {
      return last;
    }
    double extraC =
        faults.amount(ShedFault.Kind.PROBE_BIASED, name())
            + faults.amount(ShedFault.Kind.PROBE_IN_SUN, name()) * sunWPerM2 / 1000
            + (heaterOn ? faults.amount(ShedFault.Kind.PROBE_IN_PLUME, name()) : 0);
    ShedFault jumps = faults.find(ShedFault.Kind.PROBE_JUMPS, name());
    if (jumps != null && through.oneIn(5)) {
      extraC += jumps.amount();
    }
    ShedFault impossible = faults.find(ShedFault.Kind.PROBE_IMPOSSIBLE, name());
    double temperatureC = impossible == null ? through.senseC(extraC) : impossible.amount();
    last =
        plan.place() == ProbePlace.PULP
            ? Reading.ofTemperature(temperatureC)
            : Reading.of(temperatureC, humidityPct(through, faults));
    return last;
  }

  private double humidityPct(ProbeSensor through, Faults faults) {
    return faults.has(ShedFault.Kind.HUMIDITY_STUCK_AT_100, name())
        ? 100
        : through.sensePct(faults.amount(ShedFault.Kind.HUMIDITY_BIASED, name()));
  }
}
