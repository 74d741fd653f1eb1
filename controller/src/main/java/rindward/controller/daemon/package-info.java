/**
 * The tick, the life cycle and the wiring, and nothing else: what runs here decides nothing and
 * computes nothing that another package could.
 */
@NullMarked
package rindward.controller.daemon;

import org.jspecify.annotations.NullMarked;
