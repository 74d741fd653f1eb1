/**
 * The shed on MQTT: its state under retained topics, and signed words from whoever may say them.
 * Topics and messages are described in {@code controller/MQTT.md}.
 */
@NullMarked
package rindward.controller.broadcast;

import org.jspecify.annotations.NullMarked;
