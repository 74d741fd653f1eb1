package rindward.hardware.pi4j;

import java.io.InterruptedIOException;
import rindward.hardware.sensor.Pause;

/** Lets a real sensor convert by putting the thread of its bus to sleep for some milliseconds. */
public final class ConversionPause implements Pause {
  @Override
  public void millis(int millis) throws InterruptedIOException {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("told to stop while a sensor converted");
    }
  }
}
