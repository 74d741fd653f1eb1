package rindward.hardware.pi4j;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InterruptedIOException;
import org.junit.jupiter.api.Test;

class ConversionPauseTest {
  @Test
  void interruptedThread_stopsWaiting_andStaysInterrupted() {
    Thread.currentThread().interrupt();

    assertThatThrownBy(() -> new ConversionPause().millis(60_000))
        .isInstanceOf(InterruptedIOException.class);
    assertThat(Thread.interrupted()).isTrue();
  }
}
