/**
 * The varieties page: three questions a variety, over the years and beside the check, and what the
 * grower decides. Holds what the page asks of the controller, what it shows, and its routes.
 */
@NullMarked
package rindward.dashboard.varieties;

import org.jspecify.annotations.NullMarked;
