package rindward.hardware.wired;

import java.io.IOException;
import rindward.hardware.Probe;
import rindward.hardware.Relay;

/** No part at all: the simulated shed stands in for it, on a board of its own. */
public record Simulated() implements ProbeDriver, RelayDriver {
  @Override
  public String word() {
    return "simulated";
  }

  @Override
  public String place() {
    return "no part";
  }

  @Override
  public String bus() {
    return "simulated";
  }

  @Override
  public boolean hasHumidity() {
    return true;
  }

  @Override
  public boolean needsBroker() {
    return false;
  }

  @Override
  public Probe open(String probe, Parts parts) throws IOException {
    throw new IOException("probe " + probe + " is simulated and hangs on no board");
  }

  @Override
  public Relay openOff(String relay, Parts parts) throws IOException {
    throw new IOException("output " + relay + " is simulated and hangs on no board");
  }
}
