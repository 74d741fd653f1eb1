/**
 * What seems broken: one detector a file, and the collectors that turn a tick's snapshot into the
 * facts that alarms are judged by. For the control thread; a tick costs some microseconds.
 */
@NullMarked
package rindward.controller.diagnosis;

import org.jspecify.annotations.NullMarked;
