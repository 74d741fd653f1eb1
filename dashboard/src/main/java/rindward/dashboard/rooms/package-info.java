/**
 * The first page: every room and every lot at a glance. Holds what the page asks of the controller,
 * what it shows, and its routes.
 */
@NullMarked
package rindward.dashboard.rooms;

import org.jspecify.annotations.NullMarked;
