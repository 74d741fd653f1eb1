/**
 * What hangs on a door or on a crate: the page that prints it, and squares that a telephone reads,
 * also for whoever only holds one up on a phone; and the reading of them, for telephones that
 * cannot.
 */
@NullMarked
package rindward.dashboard.placards;

import org.jspecify.annotations.NullMarked;
