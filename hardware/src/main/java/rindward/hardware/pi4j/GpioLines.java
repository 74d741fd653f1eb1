package rindward.hardware.pi4j;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.io.gpio.digital.DigitalOutput;
import com.pi4j.plugin.gpiod.provider.gpio.digital.GpioDDigitalOutputProvider;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import rindward.hardware.Relay;

/**
 * The GPIO lines of a Raspberry Pi that drive relays. A line is asked for as an output together
 * with its off level, in one step, so that it never is an output at another level; {@link #close()}
 * drives every line off before it lets go. <b>Hazard:</b> a process that is killed lets go without
 * that, and common kernels then keep the last level: the next start, or the stop command of the
 * service, must switch off.
 *
 * <p>Opened and closed by one thread; the relays themselves are thread-safe.
 */
public final class GpioLines implements AutoCloseable {
  private static final int HIGHEST_GPIO = 27;

  private final Context context;
  private final List<GpioRelay> relays = new ArrayList<>();
  private boolean isClosed;

  private GpioLines(Context context) {
    this.context = context;
  }

  /**
   * Opens the lines of this board.
   *
   * @throws IOException when this is no Raspberry Pi, or its lines may not be used
   */
  public static GpioLines open() throws IOException {
    return open(
        () ->
            Pi4J.newContextBuilder()
                .noAutoDetect()
                .disableShutdownHook()
                .add(GpioDDigitalOutputProvider.newInstance())
                .build());
  }

  static GpioLines open(Supplier<Context> contexts) throws IOException {
    try {
      return new GpioLines(contexts.get());
    } catch (RuntimeException | LinkageError e) {
      throw new IOException(
          "the GPIO lines cannot be opened ("
              + Causes.sentence(e)
              + "); they work on a Raspberry Pi, for a user in the group gpio",
          e);
    }
  }

  /**
   * Opens a relay, off.
   *
   * @param gpio the line's number as the board's maker counts, 0..27; not the pin of the header
   * @param activeLevel the level at which the relay is on
   * @throws IOException when the line is out of range, taken, or cannot be used
   */
  public Relay relay(String name, int gpio, ActiveLevel activeLevel) throws IOException {
    if (gpio < 0 || gpio > HIGHEST_GPIO) {
      throw new IOException(
          "gpio of relay " + name + " was " + gpio + " but it must be 0 to " + HIGHEST_GPIO);
    }
    for (GpioRelay other : relays) {
      if (other.gpio() == gpio) {
        throw new IOException(
            "gpio of relay "
                + name
                + " was "
                + gpio
                + " but it must not be that of relay "
                + other.name()
                + " too");
      }
    }
    GpioRelay relay = new GpioRelay(name, gpio, line(name, gpio, activeLevel), activeLevel);
    relays.add(relay);
    return relay;
  }

  private DigitalOutput line(String name, int gpio, ActiveLevel activeLevel) throws IOException {
    try {
      return context.create(
          DigitalOutput.newConfigBuilder(context)
              .id("rindward-gpio-" + gpio)
              .name(name)
              .address(gpio)
              .initial(activeLevel.state(false))
              .shutdown(activeLevel.state(false))
              .build());
    } catch (RuntimeException | LinkageError e) {
      throw new IOException(
          "relay "
              + name
              + " cannot have GPIO "
              + gpio
              + " ("
              + Causes.sentence(e)
              + "); it needs a Raspberry Pi and a line that no other program holds",
          e);
    }
  }

  /**
   * Switches every relay off, whatever fails on the way, and lets go of the lines; safe to call
   * twice.
   *
   * @throws IOException when it is not certain that all are off; others are then attached to it
   */
  @Override
  public void close() throws IOException {
    if (isClosed) {
      return;
    }
    isClosed = true;
    IOException failure = null;
    for (GpioRelay relay : relays) {
      try {
        relay.close();
      } catch (IOException e) {
        if (failure == null) {
          failure = e;
        } else {
          failure.addSuppressed(e);
        }
      }
    }
    try {
      context.shutdown();
    } catch (RuntimeException e) {
      if (failure == null) {
        failure = new IOException("the GPIO lines were not let go: " + Causes.sentence(e), e);
      }
    }
    if (failure != null) {
      throw failure;
    }
  }
}
