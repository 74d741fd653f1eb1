/**
 * The alarms page: what is open with what to do, what was, and the table that all of it follows.
 */
@NullMarked
package rindward.dashboard.alarms;

import org.jspecify.annotations.NullMarked;
