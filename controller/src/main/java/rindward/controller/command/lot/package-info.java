/** Commands about lots: what people say of them, what came of it, and what to eat first. */
@NullMarked
package rindward.controller.command.lot;

import org.jspecify.annotations.NullMarked;
