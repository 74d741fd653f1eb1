/**
 * What crosses the border as a file. Recordings of other people's loggers come in as CSV; whatever
 * cannot be read is said with its line, and the rest goes on.
 */
@NullMarked
package rindward.controller.exchange;

import org.jspecify.annotations.NullMarked;
