/**
 * How a lot keeps: the weight it loses, beside what the dryness of its air would take, and how many
 * of its fruits stay sound. Estimates come with their interval, and where too little was seen there
 * is no estimate but the plain count.
 */
@NullMarked
package rindward.controller.keeping;

import org.jspecify.annotations.NullMarked;
