/**
 * What the journal tells: the lots, fruits, places, stays and sessions that follow from what people
 * said, and whether something new can stand beside it. Nothing here is kept beside the journal; a
 * lot is what its entries say.
 */
@NullMarked
package rindward.controller.lot;

import org.jspecify.annotations.NullMarked;
