/**
 * Sessions planned so that nobody knows what is in the cup: flights, blind codes, serving orders.
 * Chance enters as a seed.
 */
@NullMarked
package rindward.controller.tasting.design;

import org.jspecify.annotations.NullMarked;
