/**
 * Probes and relays that speak MQTT, and the one supervised connection to the broker that they
 * share; the only import of Paho. Nothing here waits for the network but {@link
 * rindward.hardware.mqtt.Broker#supervise()}, which has a thread to itself.
 */
@NullMarked
package rindward.hardware.mqtt;

import org.jspecify.annotations.NullMarked;
