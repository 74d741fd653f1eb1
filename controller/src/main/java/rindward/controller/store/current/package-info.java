/** What control holds of the journal: what is not over; and what is remembered of what is. */
@NullMarked
package rindward.controller.store.current;

import org.jspecify.annotations.NullMarked;
