/**
 * Tasting a harvest: sessions planned so that nobody knows what is in the cup, and results that say
 * no more than a small panel can. Chance enters as a seed; nothing here reads a clock or a file.
 */
@NullMarked
package rindward.controller.tasting;

import org.jspecify.annotations.NullMarked;
