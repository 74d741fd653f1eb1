/**
 * The crop guide: per type, how it cures, how it keeps, when it eats best; every number with its
 * source. Pure, and leftmost in the list: everything else may speak of crops, crops of nothing
 * else.
 */
@NullMarked
package rindward.controller.crop;

import org.jspecify.annotations.NullMarked;
