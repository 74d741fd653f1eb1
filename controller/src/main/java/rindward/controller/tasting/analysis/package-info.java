/** What the scores of a closed session say, and what they cannot say. */
@NullMarked
package rindward.controller.tasting.analysis;

import org.jspecify.annotations.NullMarked;
