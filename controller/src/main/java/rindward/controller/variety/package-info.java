/**
 * What to grow again: three questions about a variety, kept apart. Does it ripen here, does it eat
 * well if ripe, does it keep? Over all its seasons, beside the check of its own class, from what
 * was recorded and nothing else.
 */
@NullMarked
package rindward.controller.variety;

import org.jspecify.annotations.NullMarked;
