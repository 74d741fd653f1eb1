/**
 * The lots and lot pages: what there is, what to do with it and why, and everything that people say
 * of a lot. Holds what the pages ask of the controller, what they show, and their routes.
 */
@NullMarked
package rindward.dashboard.lots;

import org.jspecify.annotations.NullMarked;
