/** The whole shed after a tick, immutable, for everybody who only reads. */
@NullMarked
package rindward.controller.snapshot;

import org.jspecify.annotations.NullMarked;
