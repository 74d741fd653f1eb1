package rindward.hardware.pi4j;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.exception.Pi4JException;
import com.pi4j.io.i2c.I2C;
import com.pi4j.io.i2c.I2CConfig;
import com.pi4j.io.i2c.I2CProvider;
import com.pi4j.plugin.mock.provider.i2c.MockI2C;
import com.pi4j.plugin.mock.provider.i2c.MockI2CProviderImpl;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HexFormat;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Pi4J's mock of a bus, but its devices answer from a script and can refuse. */
final class ScriptedI2c {
  final List<String> written = new ArrayList<>();
  final Deque<byte[]> answers = new ArrayDeque<>();
  @Nullable IOException refusal;
  int opened;
  int closed;

  Context context() {
    opened++;
    return Pi4J.newContextBuilder().noAutoDetect().disableShutdownHook().add(new Bus()).build();
  }

  /** Not static: each context gets a bus of its own, all of them this script. */
  private final class Bus extends MockI2CProviderImpl {
    @Override
    public I2C create(I2CConfig config) {
      I2C device = new Device(this, config);
      context.registry().add(device);
      return device;
    }

    @Override
    public I2CProvider shutdown(Context context) {
      closed++;
      return super.shutdown(context);
    }
  }

  private final class Device extends MockI2C {
    Device(I2CProvider provider, I2CConfig config) {
      super(provider, config);
    }

    @Override
    public int write(byte[] data, int offset, int length) {
      refuse();
      byte[] bytes = Arrays.copyOfRange(data, offset, offset + length);
      written.add(device() + ": " + HexFormat.of().formatHex(bytes));
      return length;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) {
      refuse();
      byte[] answer = answers.removeFirst();
      System.arraycopy(answer, 0, buffer, offset, Math.min(length, answer.length));
      return answer.length;
    }

    private void refuse() {
      if (refusal != null) {
        throw new Pi4JException("Failed to execute action", refusal);
      }
    }
  }
}
