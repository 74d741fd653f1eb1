/**
 * Keeps watch over the shed tick by tick: from the snapshot to the facts that alarms are judged by,
 * and from people's answers to the alarms' next state.
 */
@NullMarked
package rindward.controller.watch;

import org.jspecify.annotations.NullMarked;
