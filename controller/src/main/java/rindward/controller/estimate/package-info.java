/**
 * What a room is doing, worked out from what its probes have said so far: its air with the probe's
 * lag made up for, the coldest fruit, the air outdoors, and how the room answers to its heater and
 * its exhaust. Pure: an estimate and a reading go in, the next estimate comes out.
 */
@NullMarked
package rindward.controller.estimate;

import org.jspecify.annotations.NullMarked;
