/** An invented farm with ten weeks behind it, to look around in without hardware. */
@NullMarked
package rindward.controller.command.demo;

import org.jspecify.annotations.NullMarked;
