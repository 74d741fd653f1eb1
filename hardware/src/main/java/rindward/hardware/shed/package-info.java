/**
 * The simulated shed: a physical model of rooms with fruit in them, so that the real control code
 * can be run for a season in seconds. Each room has air, an inner mass, fruit that lags the air,
 * vapour, timber that buffers moisture, and films of condensate on whatever is colder than the dew
 * point; the weather is generated or read from a file. {@link rindward.hardware.shed.SimulatedShed}
 * is the board that the daemon opens: its probes lag, drift and round, and everything on it can be
 * broken on demand. Balances follow ASHRAE, ISO 6946 and Becker and Fricke; units are in the names,
 * and J, W, kg, s, Pa, K and degrees C where they are not.
 */
@NullMarked
package rindward.hardware.shed;

import org.jspecify.annotations.NullMarked;
