/**
 * What the program does by itself beside the control: each task runs under one supervisor, so that
 * nothing stops in silence.
 */
@NullMarked
package rindward.controller.task;

import org.jspecify.annotations.NullMarked;
