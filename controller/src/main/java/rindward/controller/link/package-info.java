/**
 * What control tells whoever shows the shed, and the one thing that it hears from there: in one
 * process directly, between two over a local socket.
 */
@NullMarked
package rindward.controller.link;

import org.jspecify.annotations.NullMarked;
