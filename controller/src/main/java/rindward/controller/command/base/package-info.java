/**
 * What commands stand on: exit codes, the settings option, asking and saying beside a running
 * daemon, and the arguments that several of them read.
 */
@NullMarked
package rindward.controller.command.base;

import org.jspecify.annotations.NullMarked;
