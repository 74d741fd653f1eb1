/**
 * What is remembered, and the only place that speaks SQL: one SQLite file with the samples of every
 * room, the relay events with their reasons, and the journal of what people said. Nothing derived
 * is kept here. The journal is neutral: what an entry's body means is for the packages that write
 * and read it.
 */
@NullMarked
package rindward.controller.store;

import org.jspecify.annotations.NullMarked;
