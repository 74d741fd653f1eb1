/**
 * What to do with a lot now: a verdict with its reasons, what would change it and how sure it is;
 * which lot to eat first; and whether a lot suits a place. All of it follows from the crop guide,
 * the lot and what it has lived through.
 */
@NullMarked
package rindward.controller.readiness;

import org.jspecify.annotations.NullMarked;
