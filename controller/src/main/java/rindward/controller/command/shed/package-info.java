/**
 * Commands about the shed itself: running it, checking, trying and switching its parts, its copies,
 * and seasons in simulation.
 */
@NullMarked
package rindward.controller.command.shed;

import org.jspecify.annotations.NullMarked;
