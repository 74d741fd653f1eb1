/**
 * Who is told what, and when: the rota that calls the next person when nobody answers, one digest a
 * day, the words of a notice, and the channels that carry it. A channel that fails is tried again
 * and never holds anything up.
 */
@NullMarked
package rindward.controller.notice;

import org.jspecify.annotations.NullMarked;
