/**
 * What a lot has lived through: samples and stays become an account of time in range and a cure
 * progress. All arithmetic is in integers, to the millisecond; nothing is credited that was not
 * measured.
 */
@NullMarked
package rindward.controller.ledger;

import org.jspecify.annotations.NullMarked;
