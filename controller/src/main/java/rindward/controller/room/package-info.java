/** A room: what the grower wants of it, what it has, and the picture that its probes give of it. */
@NullMarked
package rindward.controller.room;

import org.jspecify.annotations.NullMarked;
