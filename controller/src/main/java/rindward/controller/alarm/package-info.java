/**
 * When the shed calls for help: conditions judged once a tick, the life cycle of an alarm after IEC
 * 62682 and ISA-18.2, the table of kinds with what a grower can do, the forecast of cold, and the
 * standard's own marks over what happened. Pure: facts and time go in; alarms and changes come out.
 */
@NullMarked
package rindward.controller.alarm;

import org.jspecify.annotations.NullMarked;
