/**
 * The tastings pages: what is tasted side by side, how far the tasters are, and what it says once
 * it is over. Holds what the pages ask of the controller, what they show, and their routes.
 */
@NullMarked
package rindward.dashboard.tastings;

import org.jspecify.annotations.NullMarked;
