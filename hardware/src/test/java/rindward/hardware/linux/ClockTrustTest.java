package rindward.hardware.linux;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClockTrustTest {
  private static final Instant LAST_STORED = Instant.parse("2026-10-03T18:00:00Z");

  @TempDir private Path root;

  @Test
  void clockSetFromTheNetwork_isTrusted_evenBeforeTheLastSample() {
    new FakeSysfs(root).with("run/systemd/timesync/synchronized", "");

    assertThat(ClockTrust.judge(root, LAST_STORED.minusSeconds(3600), LAST_STORED))
        .isEqualTo(ClockTrust.SYNCHRONISED);
  }

  @Test
  void timeThatWentOn_isTrusted() {
    ClockTrust trust = ClockTrust.judge(root, LAST_STORED.plusSeconds(1), LAST_STORED);

    assertThat(trust).isEqualTo(ClockTrust.LATER_THAN_HISTORY);
    assertThat(trust.isTrusted()).isTrue();
  }

  @Test
  void boardThatWokeIn1970_isDoubted() {
    assertThat(ClockTrust.judge(root, Instant.EPOCH, LAST_STORED).isTrusted()).isFalse();
    assertThat(ClockTrust.judge(root, LAST_STORED, LAST_STORED)).isEqualTo(ClockTrust.DOUBTFUL);
  }
}
