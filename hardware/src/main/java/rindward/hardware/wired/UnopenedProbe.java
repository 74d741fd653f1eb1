package rindward.hardware.wired;

import java.io.IOException;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

/** A probe that could not be opened; says why whenever it is read. */
record UnopenedProbe(String name, IOException why) implements Probe {
  @Override
  public Reading read() throws IOException {
    throw new IOException(why.getMessage(), why);
  }
}
