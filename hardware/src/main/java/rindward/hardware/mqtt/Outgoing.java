package rindward.hardware.mqtt;

/**
 * The latest that is to go out on a topic.
 *
 * @param isRetained whether the broker keeps it for whoever comes later: states, never commands
 * @param untilNanos after that it is no longer true and is dropped
 */
record Outgoing(String text, boolean isRetained, long untilNanos) {}
