package rindward.hardware.mqtt;

import java.time.Duration;

/**
 * One relay behind the broker. It must switch itself off when it hears nothing for a minute.
 *
 * @param commandTopic where it takes commands
 * @param on payload that switches it on
 * @param off payload that switches it off
 * @param stateTopic where it says what it does
 * @param state where in that message its state stands; reads as {@code on} and {@code off}
 * @param maxAge a state older than this is none
 */
public record NetworkRelaySettings(
    String name,
    String commandTopic,
    String on,
    String off,
    String stateTopic,
    PayloadField state,
    Duration maxAge) {
  public NetworkRelaySettings {
    Topics.check(commandTopic);
    Topics.check(stateTopic);
    if (on.equals(off)) {
      throw new IllegalArgumentException(
          "payload for on was '" + on + "' but it must differ from that for off");
    }
  }
}
