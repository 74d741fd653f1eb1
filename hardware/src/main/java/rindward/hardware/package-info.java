/**
 * What touches the room. The root holds the values that cross into the controller ({@link
 * rindward.hardware.Reading}, {@link rindward.hardware.OutputKind}) and the ports that every driver
 * implements ({@link rindward.hardware.Probe}, {@link rindward.hardware.Relay}, {@link
 * rindward.hardware.Board}). This module knows neither the controller nor the dashboard.
 */
@NullMarked
package rindward.hardware;

import org.jspecify.annotations.NullMarked;
