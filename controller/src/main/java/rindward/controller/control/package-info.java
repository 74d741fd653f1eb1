/**
 * The decision: what a room's outputs do now, and why. Rules request, the stronger right wins,
 * timers protect the contacts. Pure: memory, room, picture and now go in; rulings and memory come
 * out.
 */
@NullMarked
package rindward.controller.control;

import org.jspecify.annotations.NullMarked;
