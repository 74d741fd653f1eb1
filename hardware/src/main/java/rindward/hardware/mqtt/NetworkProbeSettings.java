package rindward.hardware.mqtt;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * One probe behind the broker.
 *
 * @param topic where it publishes
 * @param temperature where in its message the temperature stands
 * @param isFahrenheit whether that is in degrees F
 * @param humidity where the relative humidity in percent stands; null without
 * @param time where its own time stands, ISO 8601 or seconds or milliseconds since 1970; null where
 *     the arrival counts
 * @param battery where its battery's charge in percent stands; null without
 * @param maxAge a value older than this is none
 */
public record NetworkProbeSettings(
    String name,
    String topic,
    PayloadField temperature,
    boolean isFahrenheit,
    @Nullable PayloadField humidity,
    @Nullable PayloadField time,
    @Nullable PayloadField battery,
    Duration maxAge) {
  public NetworkProbeSettings {
    Topics.check(topic);
  }
}
