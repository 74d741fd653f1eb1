package rindward.hardware.mqtt;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import rindward.hardware.MonotonicClock;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.Thousandths;

/**
 * A probe that publishes its values. Reading it never waits: it looks at the latest message, and
 * how old that is. A message that the broker had kept, without a time of its own, could be from
 * last year and is not believed.
 */
public final class NetworkProbe implements Probe {
  /** A clock that is ahead by more than this is not set right. */
  private static final Duration AHEAD = Duration.ofMinutes(5);

  /**
   * A number larger than this counts milliseconds: as seconds it would lie beyond the year 5000.
   */
  private static final double MOST_SECONDS = 1e11;

  private final NetworkProbeSettings settings;
  private final Broker broker;
  private final MonotonicClock clock;
  private final InstantSource wallClock;
  private Duration age = Duration.ZERO;

  /** Listens to the probe's topic. */
  public NetworkProbe(
      NetworkProbeSettings settings, Broker broker, MonotonicClock clock, InstantSource wallClock) {
    this.settings = settings;
    this.broker = broker;
    this.clock = clock;
    this.wallClock = wallClock;
    broker.listen(settings.topic());
  }

  @Override
  public String name() {
    return settings.name();
  }

  @Override
  public Reading read() throws IOException {
    Incoming message = broker.latest(settings.topic());
    if (message == null) {
      throw new IOException(
          says(broker.trouble().isEmpty() ? "has published nothing yet" : broker.trouble()));
    }
    try {
      checkAge(message);
      double value = settings.temperature().number(message.text());
      double temperatureC = settings.isFahrenheit() ? (value - 32) / 1.8 : value;
      return settings.humidity() == null
          ? Reading.ofTemperature(temperatureC)
          : Reading.of(temperatureC, settings.humidity().number(message.text()));
    } catch (IOException | IllegalArgumentException | ArithmeticException e) {
      throw new IOException(says(e.getMessage() == null ? "cannot be read" : e.getMessage()), e);
    }
  }

  @Override
  public OptionalInt batteryMilliPct() {
    Incoming message = broker.latest(settings.topic());
    if (message == null || settings.battery() == null) {
      return OptionalInt.empty();
    }
    try {
      return OptionalInt.of(Thousandths.of(settings.battery().number(message.text())));
    } catch (IOException | ArithmeticException e) {
      return OptionalInt.empty();
    }
  }

  @Override
  public Duration age() {
    return age;
  }

  @Override
  public Duration believedFor() {
    return settings.maxAge();
  }

  private void checkAge(Incoming message) throws IOException {
    Duration since = Duration.ofNanos(clock.nanos() - message.arrivedNanos());
    if (settings.time() != null) {
      Instant taken = instant(settings.time().text(message.text()));
      Duration age = Duration.between(taken, wallClock.instant());
      if (age.compareTo(AHEAD.negated()) < 0) {
        throw new IOException("its own time was " + taken + " but it must not be ahead of ours");
      }
      since = age.compareTo(since) > 0 ? age : since;
    } else if (message.isRetained()) {
      throw new IOException("the broker had kept its last value, and nobody knows how old it is");
    }
    age = since.isNegative() ? Duration.ZERO : since;
    if (since.compareTo(settings.maxAge()) > 0) {
      throw new IOException("last value is " + since.toSeconds() + " s old");
    }
  }

  private static Instant instant(String text) throws IOException {
    try {
      double number = Double.parseDouble(text);
      double seconds = number > MOST_SECONDS ? number / 1000 : number;
      return Instant.ofEpochMilli(Math.round(seconds * 1000));
    } catch (NumberFormatException e) {
      try {
        return Instant.parse(text);
      } catch (DateTimeException d) {
        throw new IOException(
            "its own time was '" + text + "' but it must be like 2026-11-01T12:00:00Z", d);
      }
    }
  }

  private String says(@Nullable String what) {
    return "probe " + settings.name() + ": " + what;
  }
}
