/**
 * One class a command. Commands read arguments, print to the writers they are given and end with 0
 * when all is fine, 1 when the thing asked about is not well, 2 for wrong usage or settings. What
 * they answer is computed elsewhere.
 */
@NullMarked
package rindward.controller.command;

import org.jspecify.annotations.NullMarked;
