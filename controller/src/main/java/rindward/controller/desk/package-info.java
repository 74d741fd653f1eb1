/**
 * Answers what the dashboard asks, from what is known: the last snapshot, the journal and the
 * samples. Puts it into words and rounds it; decides nothing.
 */
@NullMarked
package rindward.controller.desk;

import org.jspecify.annotations.NullMarked;
