/**
 * What Linux itself offers: probes that the kernel reads (1-Wire, IIO, hwmon), the hardware
 * watchdog, the service manager, and whether the clock can be trusted. The root of sysfs and every
 * other path is an argument, so that a folder of plain files can stand in for a board.
 */
@NullMarked
package rindward.hardware.linux;

import org.jspecify.annotations.NullMarked;
