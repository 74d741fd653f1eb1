/**
 * What people see. The root holds the server; {@code live} the event stream; then one folder a
 * page, each with its desk (the interface that the controller implements), its view records and its
 * routes. This module knows neither the controller nor the hardware.
 */
@NullMarked
package rindward.dashboard;

import org.jspecify.annotations.NullMarked;
