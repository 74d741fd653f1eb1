/**
 * Who gets in, and how long one may stand in the door: everything that holds before a request is
 * anybody's. A shed's page is in reach of whoever is in its network, and must go on for the phones
 * that belong there.
 */
@NullMarked
package rindward.dashboard.entrance;

import org.jspecify.annotations.NullMarked;
