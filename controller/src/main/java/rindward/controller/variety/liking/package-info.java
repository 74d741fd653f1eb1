/**
 * How much each variety is liked: one estimate from every score that was ever given, in which
 * variety, lot, fruit, taster and session each have their own share. It knows scores and names, no
 * entry and no page.
 */
@NullMarked
package rindward.controller.variety.liking;

import org.jspecify.annotations.NullMarked;
