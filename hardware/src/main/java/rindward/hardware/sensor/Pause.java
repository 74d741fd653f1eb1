package rindward.hardware.sensor;

import java.io.InterruptedIOException;

/** Lets a sensor convert. Handed in, so that a test need not wait. */
@FunctionalInterface
public interface Pause {
  /**
   * Waits at least {@code millis}.
   *
   * @throws InterruptedIOException when the thread is told to stop; its flag stays set
   */
  void millis(int millis) throws InterruptedIOException;
}
