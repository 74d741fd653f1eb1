/**
 * What crosses the border as a file or on paper. Recordings of other people's loggers come in as
 * CSV, lots go both ways; whatever cannot be read is said with its line. Labels and walk sheets are
 * printed.
 */
@NullMarked
package rindward.controller.exchange;

import org.jspecify.annotations.NullMarked;
