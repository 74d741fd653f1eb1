/**
 * What people say: one entry, once, never changed. Every kind of entry and the words it is said in
 * stand here; what follows from them is told elsewhere.
 */
@NullMarked
package rindward.controller.journal;

import org.jspecify.annotations.NullMarked;
