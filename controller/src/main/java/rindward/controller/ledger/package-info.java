/**
 * What a lot has lived through: samples and stays become an account of time in range, a cure
 * progress, an age and a dose of cold. Sums are in integers, to the millisecond; nothing is
 * credited that was not measured.
 */
@NullMarked
package rindward.controller.ledger;

import org.jspecify.annotations.NullMarked;
