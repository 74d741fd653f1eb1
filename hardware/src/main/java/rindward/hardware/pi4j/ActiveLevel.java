package rindward.hardware.pi4j;

import com.pi4j.io.gpio.digital.DigitalState;

/** The level of a line at which its relay is on. */
public enum ActiveLevel {
  HIGH,
  LOW;

  /** The serial console sends on this line while the board starts. */
  private static final int CONSOLE_GPIO = 14;

  /** Lines up to this one are pulled up at reset, those above it down. */
  private static final int LAST_PULLED_UP_GPIO = 8;

  /**
   * Tells whether a relay on this line may be on while the board starts and nobody drives the line:
   * GPIO 0 to 8 are pulled up, 9 to 27 down (BCM2835 ARM Peripherals, p. 102; not confirmed for
   * boards with an RP1), and GPIO 14 carries the console.
   */
  public boolean mayBeOnAtBoot(int gpio) {
    ActiveLevel pulled = gpio <= LAST_PULLED_UP_GPIO ? HIGH : LOW;
    return this == pulled || gpio == CONSOLE_GPIO;
  }

  DigitalState state(boolean on) {
    return on == (this == HIGH) ? DigitalState.HIGH : DigitalState.LOW;
  }
}
