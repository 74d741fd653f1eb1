/**
 * The shed page: probes, outputs with their reasons, switching by hand, and how the program itself
 * is doing.
 */
@NullMarked
package rindward.dashboard.shed;

import org.jspecify.annotations.NullMarked;
