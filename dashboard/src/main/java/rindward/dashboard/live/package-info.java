/**
 * The stream that keeps open pages current: one hub, one worker thread, any number of readers, none
 * of whom can hold up the room's control.
 */
@NullMarked
package rindward.dashboard.live;

import org.jspecify.annotations.NullMarked;
