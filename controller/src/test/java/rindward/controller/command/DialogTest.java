package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.shed.Attendance;
import rindward.controller.command.shed.CalibrateCommand;
import rindward.controller.command.shed.CommissionCommand;
import rindward.controller.daemon.FakeMachine;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.Time;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.ProbeCalibrated;
import rindward.controller.journal.Recorded;
import rindward.controller.settings.BoardFile;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;

/** Whole walks through {@code calibrate}, typed by a person. */
class DialogTest {
  private static final Instant AT = Instant.parse("2026-11-01T12:00:00Z");

  @TempDir private Path folder;
  private final Time time = new Time.Stepped(AT);
  private FakeMachine machine;
  private BoardFile file;
  private Runnable betweenAnswers = () -> {};

  @BeforeEach
  void aBoardWithTwoOutputsAndAProbe() throws IOException {
    machine = new FakeMachine(folder.resolve("sys"), time);
    machine.airSays(20_400, 72_000);
    file =
        BoardFile.in(
            folder,
            "[heartbeat]\nline = 24\n",
            BoardFile.AIR,
            BoardFile.heater(17),
            BoardFile.fan(22));
  }

  /** Greenspan 1977 at 20 C: 33.07 % over magnesium chloride, 75.47 % over table salt. */
  @Test
  void calibrate_twoSalts_asksForEachJar_andNotesWhatIsAdded() throws IOException {
    machine.airSays(20_000, 35_000);
    betweenAnswers = () -> machine.airSays(20_000, 75_000);

    CommandRun run = calibrate("yes\nyes\n", "--salts", "2");

    assertThat(run.err()).isEmpty();
    assertThat(run.exit()).isZero();
    assertThat(run.out())
        .containsSubsequence(
            "over wet magnesium chloride",
            "over wet table salt",
            "Probe air: 0.0 C is added; humidity times 1.06, then -4.03 % is added; from the next"
                + " start of run on.");
    assertThat(found().humidityMilliPct()).isEqualTo(-4_030);
    assertThat(found().against()).isEqualTo("magnesium chloride and table salt");
  }

  @Test
  void calibrate_thermometer_keepsWhatTheSaltHadFound() throws IOException {
    calibrate("yes\n", "--salts", "1");
    int salt = found().humidityMilliPct();

    CommandRun run = calibrate("yes\n", "--thermometer", "20.1");

    assertThat(run.exit()).isZero();
    assertThat(run.out()).contains("Probe air: -0.3 C is added");
    assertThat(found().temperatureMilliC()).isEqualTo(-300);
    assertThat(found().humidityMilliPct()).isEqualTo(salt).isNotZero();
  }

  @Test
  void calibrate_withoutAPlainYes_changesNothing() throws IOException {
    for (String answer : List.of("Yes\n", "no\n", "")) {
      CommandRun run = calibrate(answer, "--salts", "1");

      assertThat(run.exit()).isEqualTo(ExitCode.NOT_WELL);
      assertThat(run.out()).endsWith("Nothing was changed.\n");
    }
    assertThat(journal()).isEmpty();
  }

  @Test
  void calibrate_givenUpAtTheSecondJar_changesNothing() throws IOException {
    machine.airSays(20_000, 35_000);

    CommandRun run = calibrate("yes\n", "--salts", "2");

    assertThat(run.exit()).isEqualTo(ExitCode.NOT_WELL);
    assertThat(run.out()).endsWith("Nothing was changed.\n");
    assertThat(journal()).isEmpty();
  }

  @Test
  void calibrate_bothAnswersGivenAtOnce_areBothHeard() throws IOException {
    machine.airSays(20_000, 35_000);

    CommandRun run =
        run(
            CalibrateCommand::new,
            new ByteArrayInputStream("yes\nyes\n".getBytes(Charset.defaultCharset())),
            "air",
            "--salts",
            "2");

    assertThat(run.err()).contains("probe air is off by 40.47 %");
  }

  @Test
  void calibrate_probeInTheWrongJar_isRefusedInASentence() throws IOException {
    machine.airSays(20_000, 35_000);

    CommandRun run = calibrate("yes\n", "--salts", "1");

    assertThat(run.exit()).isEqualTo(ExitCode.NOT_WELL);
    assertThat(run.err()).contains("probe air is off by 40.47 %").hasLineCount(1);
    assertThat(journal()).isEmpty();
  }

  @Test
  void calibrate_wrongNameOrNumber_saysWhatWouldBeRight() {
    assertThat(calibrate("", "--salts", "3").err())
        .contains("--salts was '3' but it must be 1 or 2");
    assertThat(run(CalibrateCommand::new, "", "fruit", "--salts", "1").err())
        .contains("PROBE was 'fruit' but there is no such probe");
  }

  private CommandRun commission(String typed) {
    return run(CommissionCommand::new, typed);
  }

  private CommandRun calibrate(String typed, String... with) {
    String[] args = new String[with.length + 1];
    args[0] = "air";
    System.arraycopy(with, 0, args, 1, with.length);
    return run(CalibrateCommand::new, typed, args);
  }

  private CommandRun run(Function<Attendance, Object> command, String typed, String... args) {
    return run(command, new Keyboard(typed), args);
  }

  private CommandRun run(Function<Attendance, Object> command, InputStream in, String... args) {
    Attendance attendance =
        new Attendance(settings -> new RealBoard(settings, () -> machine), millis -> {}, time, in);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line =
        new CommandLine(command.apply(attendance))
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err));
    String[] all = new String[args.length + 4];
    System.arraycopy(args, 0, all, 0, args.length);
    all[args.length] = "--by";
    all[args.length + 1] = "Wren";
    all[args.length + 2] = "--settings";
    all[args.length + 3] = file.path().toString();
    return new CommandRun(line.execute(all), out.toString(), err.toString());
  }

  private Settings settings() {
    return file.settings();
  }

  private List<Recorded> journal() throws IOException {
    Path store = settings().store();
    if (!Files.exists(store)) {
      return List.of();
    }
    try (Database database = new Database(store)) {
      return new EntryService(new Journal(database), settings().crops()).journal();
    }
  }

  private List<String> tried() throws IOException {
    return journal().stream().map(said -> ((OutputTried) said.entry()).output()).toList();
  }

  private ProbeCalibrated found() throws IOException {
    List<Recorded> all = journal();
    return (ProbeCalibrated) all.get(all.size() - 1).entry();
  }

  /** Gives a line each time somebody waits for one, as a terminal does. */
  private final class Keyboard extends InputStream {
    private final Deque<String> lines = new ArrayDeque<>();
    private boolean isAnswered;

    Keyboard(String typed) {
      typed.lines().forEach(lines::add);
    }

    @Override
    public int read() {
      throw new UnsupportedOperationException("a terminal is read by the line");
    }

    @Override
    public int read(byte[] into, int from, int most) {
      String line = lines.poll();
      if (line == null) {
        return -1;
      }
      if (isAnswered) {
        betweenAnswers.run();
      }
      isAnswered = true;
      byte[] bytes = (line + "\n").getBytes(Charset.defaultCharset());
      System.arraycopy(bytes, 0, into, from, bytes.length);
      return bytes.length;
    }
  }
}
