package rindward.hardware.mqtt;

/**
 * The latest that came in on a topic.
 *
 * @param text payload as UTF-8
 * @param isRetained whether the broker had kept it; then nobody knows how old it is
 * @param arrivedNanos when it came in, monotonic
 */
public record Incoming(String text, boolean isRetained, long arrivedNanos) {}
