/** Commands about tasting: planning a panel, its sheets and scores, and a taste in the kitchen. */
@NullMarked
package rindward.controller.command.panel;

import org.jspecify.annotations.NullMarked;
