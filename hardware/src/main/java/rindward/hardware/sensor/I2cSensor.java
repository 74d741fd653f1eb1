package rindward.hardware.sensor;

import java.io.IOException;
import rindward.hardware.Reading;

/** The conversation with one kind of sensor. For the thread that works its bus. */
interface I2cSensor {
  /**
   * Brings the sensor from any state, also from one that another program left, to a known one: soft
   * reset, heater off, settings made.
   */
  void prepare(I2cDevice device, Pause pause) throws IOException;

  /** Makes one measurement and returns it, checked. */
  Reading measure(I2cDevice device, Pause pause) throws IOException;
}
