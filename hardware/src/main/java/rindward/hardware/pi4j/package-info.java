/**
 * The two places where Pi4J is used: an I2C bus ({@link rindward.hardware.pi4j.Pi4jI2cBus}) and
 * GPIO output lines ({@link rindward.hardware.pi4j.GpioLines}). Each has a Pi4J context of its own
 * with the one provider it names, found by no search, and without Pi4J's shutdown hook: what is
 * switched off when is decided in one place, and a bus that is opened again must not touch a relay.
 */
@NullMarked
package rindward.hardware.pi4j;

import org.jspecify.annotations.NullMarked;
