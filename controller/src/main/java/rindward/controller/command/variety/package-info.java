/** Commands about varieties: how they ripen, eat and keep, and what was decided of them. */
@NullMarked
package rindward.controller.command.variety;

import org.jspecify.annotations.NullMarked;
