/**
 * The board that real parts hang on. What the settings say of a probe or an output is one driver
 * ({@link rindward.hardware.wired.ProbeDriver}, {@link rindward.hardware.wired.RelayDriver}), which
 * knows how to open itself; {@link rindward.hardware.wired.WiredBoard} opens exactly those that are
 * named. {@link rindward.hardware.wired.Machine} is everything that a test must stand in for.
 */
@NullMarked
package rindward.hardware.wired;

import org.jspecify.annotations.NullMarked;
