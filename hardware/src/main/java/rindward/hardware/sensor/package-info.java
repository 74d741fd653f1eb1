/**
 * What the bytes of a sensor mean: checksums, frames and conversions, pure functions after the
 * makers' data sheets. Beside them stand the little that is needed to ask a sensor for its bytes: a
 * port for an I2C bus ({@link rindward.hardware.sensor.I2cBus}) and the probes that speak through
 * it. What implements the port, and what Linux reads for us, stands elsewhere.
 */
@NullMarked
package rindward.hardware.sensor;

import org.jspecify.annotations.NullMarked;
