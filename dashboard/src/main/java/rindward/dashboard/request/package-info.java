/**
 * What a change carries with it: a body that is read within bounds, and a key by which a repeated
 * change is known and not made twice.
 */
@NullMarked
package rindward.dashboard.request;

import org.jspecify.annotations.NullMarked;
