package rindward.controller.task;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What becomes of a task that throws, once or for ever, on time moved by hand. */
class SupervisedTaskTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");
  private static final Duration EVERY = Duration.ofSeconds(45);

  private final SteppedThread thread = new SteppedThread();
  private final TaskSupervisor tasks =
      new TaskSupervisor(() -> START.plusNanos(thread.nanos()), thread::nanos);
  private final SupervisedTask task = tasks.task("flush", Cadence.every(EVERY));
  private final List<Long> turns = new ArrayList<>();
  private final List<LogRecord> logged = new ArrayList<>();
  private final Handler listener = listener();
  private @Nullable Throwable thrown;

  @BeforeEach
  void listenToTheLog() {
    Logger.getLogger(SupervisedTask.class.getName()).addHandler(listener);
  }

  @AfterEach
  void letGoOfTheLog() {
    Logger.getLogger(SupervisedTask.class.getName()).removeHandler(listener);
  }

  @Test
  void aTaskThatSucceeds_isDoneEverySoOften_andOwesNothing() {
    task.start(thread, this::work);
    thread.advance(Duration.ofSeconds(100));

    assertThat(turns).containsExactly(0L, 45L, 90L);
    assertThat(task.health().lastSuccess()).isEqualTo(START.plusSeconds(90));
    assertThat(task.health().failures()).isZero();
    assertThat(tasks.overdue()).isEmpty();
    assertThat(logged).isEmpty();
  }

  @Test
  void aTaskThatThrowsOnce_isTriedAgainSoon_andGoesOnAsBefore() {
    thrown = new OutOfMemoryError("a test says so");
    task.start(thread, this::work);
    thread.advance(Duration.ofSeconds(1));
    assertThat(task.health().trouble()).isEqualTo("OutOfMemoryError: a test says so");
    thrown = null;
    thread.advance(Duration.ofSeconds(60));

    assertThat(turns).containsExactly(0L, 5L, 50L);
    assertThat(task.health().failures()).isEqualTo(1);
    assertThat(task.health().trouble()).isEmpty();
    assertThat(logged).hasSize(2);
    assertThat(logged.get(0).getThrown()).isInstanceOf(OutOfMemoryError.class);
    assertThat(logged.get(1).getMessage()).contains("flush", "succeeds again", "1");
  }

  @Test
  void
      aTaskThatThrowsForEver_isTriedAfterLongerAndLongerPauses_toldOnce_andIsOverdueUntilSuccess() {
    thrown = new IOException("the card does not answer");
    task.start(thread, this::work);
    thread.advance(Duration.ofMinutes(5));

    // 5, 10, 20, 40 s later, and then every minute.
    assertThat(turns).containsExactly(0L, 5L, 15L, 35L, 75L, 135L, 195L, 255L);
    assertThat(tasks.overdue()).isEmpty();
    thread.advance(Duration.ofSeconds(1));
    assertThat(tasks.overdue()).extracting(TaskHealth::task).containsExactly("flush");
    assertThat(task.health().trouble()).isEqualTo("the card does not answer");
    assertThat(task.health().lastSuccess()).isNull();
    assertThat(logged).hasSize(1);

    thrown = null;
    thread.advance(Duration.ofMinutes(1));
    assertThat(tasks.overdue()).isEmpty();
  }

  @Test
  void anotherCause_isToldToo() {
    thrown = new IOException("the card does not answer");
    task.start(thread, this::work);
    thread.advance(Duration.ofSeconds(1));
    thrown = new IllegalStateException("another fault");
    thread.advance(Duration.ofMinutes(1));

    assertThat(logged).hasSize(2);
  }

  @Test
  void aTaskThatHangs_isOverdueWithoutEverHavingFailed() {
    TaskThread stuck = (pause, turn) -> {};
    task.start(stuck, this::work);
    thread.advance(Duration.ofMinutes(6));

    assertThat(tasks.overdue()).extracting(TaskHealth::task).containsExactly("flush");
    assertThat(task.health().failures()).isZero();
  }

  @Test
  void whatIsDoneOnce_isTriedUntilItSucceeds_andThenNoMore() {
    SupervisedTask once = tasks.task("once", Cadence.once());
    thrown = new IOException("not yet");
    once.start(thread, this::work);
    thread.advance(Duration.ofSeconds(6));
    thrown = null;
    thread.advance(Duration.ofHours(1));

    assertThat(turns).containsExactly(0L, 5L, 15L);
    assertThat(tasks.overdue()).isEmpty();
  }

  @Test
  void whatOthersAskFor_owesNothingUntilItIsAskedFor() {
    SupervisedTask asked = tasks.task("asked", Cadence.whenAsked());
    thread.advance(Duration.ofHours(1));
    assertThat(tasks.overdue()).isEmpty();

    thrown = new StackOverflowError();
    assertThat(asked.run(this::work)).isFalse();
    thread.advance(Duration.ofMinutes(6));
    assertThat(tasks.overdue()).extracting(TaskHealth::task).containsExactly("asked");

    thrown = null;
    assertThat(asked.run(this::work)).isTrue();
    thread.advance(Duration.ofHours(1));
    assertThat(tasks.overdue()).isEmpty();
  }

  private void work() throws Exception {
    turns.add(thread.nanos() / 1_000_000_000L);
    if (thrown instanceof Error error) {
      throw error;
    }
    if (thrown instanceof Exception exception) {
      throw exception;
    }
  }

  private Handler listener() {
    return new Handler() {
      @Override
      public void publish(LogRecord entry) {
        logged.add(entry);
      }

      @Override
      public void flush() {}

      @Override
      public void close() {}
    };
  }
}
