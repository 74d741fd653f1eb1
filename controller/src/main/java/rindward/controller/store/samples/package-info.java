/**
 * What was measured, on its way to the disk and back: bounded memory first, then small chunks, then
 * one chunk a day, and a room's history from all three. What is flushed along with the samples
 * (events, switchings) is written by the logs of the room before this one.
 */
@NullMarked
package rindward.controller.store.samples;

import org.jspecify.annotations.NullMarked;
