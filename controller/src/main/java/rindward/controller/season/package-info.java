/**
 * A whole season lived through as fast as it goes: the control code of the farm on the simulated
 * shed, judged by the shed's truth and not by its probes.
 */
@NullMarked
package rindward.controller.season;

import org.jspecify.annotations.NullMarked;
