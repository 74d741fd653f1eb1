package rindward.hardware.shed;

import java.io.IOException;
import rindward.hardware.Relay;

/** A relay of the simulated shed. Its contact may differ from its command when it is broken. */
final class SimulatedRelay implements Relay {
  private final SimulatedShed shed;
  final RelayPlan plan;
  private boolean commanded;
  private boolean contact;
  private int switchings;
  private double onSeconds;

  SimulatedRelay(SimulatedShed shed, RelayPlan plan) {
    this.shed = shed;
    this.plan = plan;
  }

  @Override
  public String name() {
    return plan.name();
  }

  @Override
  public void set(boolean on) throws IOException {
    shed.command(this, on);
  }

  /** Returns whether that is another command than the last. */
  boolean command(boolean on) {
    boolean isNew = on != commanded;
    commanded = on;
    return isNew;
  }

  /** Lets the contact follow the command as far as the faults allow. */
  void settle(Faults faults) {
    boolean closed =
        !faults.has(ShedFault.Kind.OUTPUT_DEAD, name())
            && !faults.has(ShedFault.Kind.SUPPLY_LOST, "")
            && (commanded || faults.has(ShedFault.Kind.OUTPUT_STUCK_ON, name()));
    switchings += closed == contact ? 0 : 1;
    contact = closed;
  }

  void pass(double dtSeconds) {
    onSeconds += contact ? dtSeconds : 0;
  }

  boolean isOn() {
    return contact;
  }

  OutputMeter meter(double kWh) {
    return new OutputMeter(switchings, onSeconds / 3600, kWh);
  }
}
