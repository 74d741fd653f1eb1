/**
 * Moist air after ASHRAE Fundamentals 2017, chapter 1: what a temperature and a relative humidity
 * mean together. Pure functions of doubles that allocate nothing, cheap enough for a simulation,
 * and one record, {@link rindward.hardware.air.MoistAir}, that asks them for a single state.
 */
@NullMarked
package rindward.hardware.air;

import org.jspecify.annotations.NullMarked;
