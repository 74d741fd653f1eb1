package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Alarms;
import rindward.controller.control.Tick;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.page.Page;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.controller.task.SteppedThread;
import rindward.controller.task.TaskHealth;
import rindward.controller.task.TaskSupervisor;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.SimulatedShed;

/**
 * Each task of the daemon is made to throw, once and for ever, on time moved by hand: what becomes
 * of the samples, and what alarms, metrics and the shed page say.
 */
class FailingTasksScenarioTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");
  private static final String NOBODY_LISTENS =
      """

      [webhook]
      url = "http://127.0.0.1:9/notice"

      [people.Wren]
      by = ["webhook"]

      [alive]
      url = "http://127.0.0.1:9/alive"
      every = "1m"

      [broker]
      host = "127.0.0.1"
      port = 9
      tls = false

      [mqtt]
      publish = true
      """;

  private static final List<String> RUN_HERE =
      List.of(
          "flush",
          "clock",
          "journal",
          "accuracies",
          "database-check",
          "nightly-copy",
          "upkeep",
          "estimate",
          "lock-out",
          "lot-news",
          "notice-webhook",
          "notice-mqtt",
          "broadcast",
          "sign-of-life",
          "probes-simulated",
          "publish",
          "alarms");

  /** What these do is asked for by a watchdog or a broker, which are not here. */
  private static final List<String> RUN_WITH_A_MACHINE = List.of("watchdog", "board-broker");

  private static final String SAID = "a test says so";

  @TempDir private Path folder;
  private @Nullable String broken;
  private boolean isFaultOfTheProgram;
  private int faults;
  private final SteppedThread thread = new SteppedThread();
  private final Time time = () -> new Tick(START.plusNanos(thread.nanos()), thread.nanos());
  private final TaskSupervisor tasks =
      new TaskSupervisor(
          () -> time.now().at(),
          thread::nanos,
          (task, work) ->
              () -> {
                if (task.equals(broken) && faults > 0) {
                  faults--;
                  throw fault();
                }
                work.run();
              });
  private Settings settings;
  private Daemon daemon;
  private Page page;

  @BeforeEach
  void aShedWithEveryWayOut() throws Exception {
    Path file = folder.resolve("shed.toml");
    Files.writeString(file, Files.readString(Path.of("examples/shed.toml")) + NOBODY_LISTENS);
    Problems problems = new Problems();
    Optional<Settings> read = SettingsReader.read(file, problems);
    assertThat(problems.list()).isEmpty();
    settings = read.orElseThrow();
    SimulatedShed shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time);
    daemon =
        new Daemon(
            settings, shed, time, false, HostMachine.none(), new RuleBasedController(), tasks);
    daemon.startTasks(name -> thread);
    daemon.publishBy(name -> thread);
    page = new Page(settings, daemon.view(), time);
  }

  @AfterEach
  void close() {
    broken = null;
    page.close();
    daemon.close();
  }

  @Test
  void everyTaskIsKnownHere() {
    Set<String> known = new TreeSet<>(RUN_HERE);
    known.addAll(RUN_WITH_A_MACHINE);
    assertThat(new TreeSet<>(tasks.health().stream().map(TaskHealth::task).toList()))
        .isEqualTo(known);
  }

  @ParameterizedTest
  @FieldSource("RUN_HERE")
  void aFaultOfTheProgramOnce_costsOneTurn(String task) throws Exception {
    isFaultOfTheProgram = true;
    faults = 1;
    broken = task;
    until(() -> health(task).failures() > 0);
    until(() -> health(task).failuresInARow() == 0);
    live(Duration.ofMinutes(2));

    assertThat(health(task).failures()).isOne();
    assertThat(health(task).lastSuccess()).isNotNull();
    assertThat(failing()).isEmpty();
    assertThat(page()).noneMatch(line -> line.startsWith("Task "));
    assertThat(newestKeptAge()).isLessThan(Duration.ofMinutes(1));
  }

  @ParameterizedTest
  @FieldSource("RUN_HERE")
  void throwingForEver_isToldEverywhere_costsNothingElse_andIsOverWithTheFirstSuccess(String task)
      throws Exception {
    faults = Integer.MAX_VALUE;
    broken = task;
    until(() -> isOverdue(task));
    live(Duration.ofMinutes(2));

    if (!task.equals("alarms")) { // Nobody can raise an alarm over what raises them.
      assertThat(failing()).containsExactly(task);
    }
    assertThat(page())
        .anyMatch(line -> line.startsWith("Task " + task + " has failed") && line.endsWith(SAID));
    assertThat(meter("rindward_task_overdue", task)).isOne();
    assertThat(meter("rindward_task_failures_total", task)).isGreaterThan(1);
    if (!task.equals("flush")) {
      assertThat(newestKeptAge()).isLessThan(Duration.ofMinutes(1));
    }

    broken = null;
    until(() -> !isOverdue(task));
    live(Duration.ofMinutes(2));
    assertThat(failing()).isEmpty();
    assertThat(page()).noneMatch(line -> line.startsWith("Task "));
    assertThat(meter("rindward_task_overdue", task)).isZero();
    assertThat(meter("rindward_task_last_success_timestamp_seconds", task))
        .isGreaterThan(START.getEpochSecond());
    assertThat(newestKeptAge()).isLessThan(Duration.ofMinutes(1));
  }

  private void live(Duration stretch) throws InterruptedException {
    for (long i = stretch.dividedBy(settings.tick()); i > 0; i--) {
      thread.advance(settings.tick());
      daemon.step();
      daemon.publish();
    }
  }

  private void until(BooleanSupplier isSo) throws InterruptedException {
    Duration most = Duration.ofHours(5);
    for (long i = most.dividedBy(settings.tick()); !isSo.getAsBoolean(); i--) {
      assertThat(i).isPositive();
      live(settings.tick());
    }
  }

  private Exception fault() {
    if (isFaultOfTheProgram) {
      throw new StackOverflowError(SAID);
    }
    return new IllegalStateException(SAID);
  }

  private TaskHealth health(String task) {
    return tasks.health().stream().filter(h -> h.task().equals(task)).findFirst().orElseThrow();
  }

  private boolean isOverdue(String task) {
    return health(task).isOverdue(thread.nanos());
  }

  private List<String> failing() {
    Alarms alarms = daemon.latest().judgement().alarms();
    return alarms.all().keySet().stream()
        .filter(id -> id.kind() == AlarmKind.TASK_FAILING)
        .filter(id -> alarms.alarm(id).condition().active())
        .map(AlarmId::thing)
        .toList();
  }

  private List<String> page() {
    List<String> lines = new ArrayList<>();
    page.shed().shed().health().forEach(line -> lines.add(line.what() + " " + line.sentence()));
    return lines;
  }

  private Duration newestKeptAge() {
    try (Database database = new Database(settings.store())) {
      long newest = new SampleStore(database, new SampleLog(database)).newestMillis().orElseThrow();
      return Duration.between(Instant.ofEpochMilli(newest), time.now().at());
    }
  }

  private double meter(String name, String task) {
    String text = page.metrics();
    String meter = name + "{task=\"" + task + "\"}";
    Matcher found =
        Pattern.compile("^" + Pattern.quote(meter) + " (\\S+)$", Pattern.MULTILINE).matcher(text);
    assertThat(found.find()).as(meter + " in\n" + text).isTrue();
    return Double.parseDouble(found.group(1));
  }
}
