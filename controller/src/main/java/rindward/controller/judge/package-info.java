/**
 * The one judge: entries, samples and guide turned into what a lot is and what becomes of it. Page,
 * alarms, commands and reports ask here, so that they say the same of the same lot. Pure: samples
 * come through a function, time is handed in.
 */
@NullMarked
package rindward.controller.judge;

import org.jspecify.annotations.NullMarked;
