/**
 * What people say about the harvest: the journal's entries, and the lots, places and stays that
 * follow from them. Nothing here is kept beside the journal; a lot is what its entries say.
 */
@NullMarked
package rindward.controller.lot;

import org.jspecify.annotations.NullMarked;
