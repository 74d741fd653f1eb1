package rindward.hardware.pi4j;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.io.exception.IOException;
import com.pi4j.io.gpio.digital.DigitalOutput;
import com.pi4j.io.gpio.digital.DigitalOutputConfig;
import com.pi4j.io.gpio.digital.DigitalOutputProvider;
import com.pi4j.io.gpio.digital.DigitalState;
import com.pi4j.plugin.mock.provider.gpio.digital.MockDigitalOutput;
import com.pi4j.plugin.mock.provider.gpio.digital.MockDigitalOutputProviderImpl;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Pi4J's mock lines, with a note of the levels that each was asked for when it became an output,
 * and of every level that it was driven to.
 */
public final class RecordedLines extends MockDigitalOutputProviderImpl {
  public final List<String> asked = new ArrayList<>();
  public final List<String> driven = new ArrayList<>();
  public final Set<Integer> broken = new HashSet<>();

  /** Opens these lines as a board's. */
  public GpioLines open() throws java.io.IOException {
    return GpioLines.open(this::newContext);
  }

  Context newContext() {
    return Pi4J.newContextBuilder().noAutoDetect().disableShutdownHook().add(this).build();
  }

  @Override
  public DigitalOutput create(DigitalOutputConfig config) {
    asked.add(
        String.format(
            "%d starts %s ends %s",
            config.address(), config.initialState(), config.shutdownState()));
    DigitalOutput line = new Line(this, config);
    context.registry().add(line);
    return line;
  }

  private final class Line extends MockDigitalOutput {
    Line(DigitalOutputProvider provider, DigitalOutputConfig config) {
      super(provider, config);
    }

    @Override
    public DigitalOutput state(DigitalState state) {
      if (broken.contains(config().address())) {
        throw new IOException("Failed to set state", new java.io.IOException("line is gone"));
      }
      driven.add(config().address() + " " + state);
      return super.state(state);
    }
  }
}
