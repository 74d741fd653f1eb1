/**
 * How the record outlives its disk: the nightly copies, which of them are kept, going on from one,
 * and what becomes at a start of a database that is damaged.
 */
@NullMarked
package rindward.controller.store.copies;

import org.jspecify.annotations.NullMarked;
