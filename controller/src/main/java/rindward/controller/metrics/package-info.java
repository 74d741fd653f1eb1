/** The shed in numbers for whoever scrapes them; the only import of Micrometer. */
@NullMarked
package rindward.controller.metrics;

import org.jspecify.annotations.NullMarked;
