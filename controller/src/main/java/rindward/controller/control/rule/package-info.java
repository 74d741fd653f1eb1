/**
 * The rules of control, one a file, and the controller that asks them in order. A rule looks at the
 * input and requests outputs on or off; it holds no state.
 */
@NullMarked
package rindward.controller.control.rule;

import org.jspecify.annotations.NullMarked;
