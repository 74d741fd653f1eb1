package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.shed.Attendance;
import rindward.controller.command.shed.CheckCommand;
import rindward.controller.command.shed.CommissionCommand;
import rindward.controller.command.shed.TriedParts;
import rindward.controller.daemon.FakeMachine;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.Time;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.Proof;
import rindward.controller.journal.ProofTried;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lots;
import rindward.controller.settings.BoardFile;
import rindward.controller.settings.ProofState;
import rindward.controller.settings.SafetyProofs;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;

/** Whole walks through {@code commission}, answered by somebody who reads each question. */
class CommissioningWalkTest {
  private static final Instant AT = Instant.parse("2026-11-01T12:00:00Z");

  @TempDir private Path folder;
  private final Time.Stepped time = new Time.Stepped(AT);
  private final Map<String, String> answers = new HashMap<>();
  private Duration untilAnswer = Duration.ZERO;
  private FakeMachine machine;
  private BoardFile file;

  @BeforeEach
  void aStoreWithAHeaterAFanAndAHeartbeat() throws IOException {
    machine = new FakeMachine(folder.resolve("sys"), time);
    machine.airSays(20_400, 72_000);
    file =
        BoardFile.in(
            folder,
            "[heartbeat]\nline = 24\n",
            BoardFile.AIR,
            BoardFile.heater(17),
            BoardFile.fan(22));
    answers.put("At what temperature did it open?", "41.5");
    answers.put("To what temperature is it set?", "4.5");
    answers.put("Which probe hangs", "air");
    answers.put("How was it tried", "by Rook, electrician, with a lamp");
  }

  @Test
  void everyProofIsAsked_done_andKeptWithNameAndDate_beforeTheRoomIsControlled() throws Exception {
    untilAnswer = Duration.ofSeconds(27);

    CommandRun run = commission();

    assertThat(run.err()).isEmpty();
    assertThat(run.exit()).isZero();
    assertThat(run.out())
        .startsWith("Read hardware/SAFETY.md first.")
        .containsSubsequence(
            "Let the heart beat (GPIO 24",
            "Is it open again?",
            "Output heartbeat was tried by Wren. Everything heavy was open after 27 s.",
            "Switch on fan in room store",
            "Output fan was tried by Wren.",
            "Switch on heater in room store (GPIO 17, on when high) for 5 s, with fan running?",
            "Output heater ran as it should.",
            "Press the button of each.",
            "the sheet with its times is kept",
            "Unplug the fan",
            "Did the heater stay off all the time?",
            "the heater's contactor bridged",
            "the frost thermostat brings heat without this board",
            "the high limit opens and stays open",
            "At what temperature did it open?",
            "Which probe hangs where its sensor hangs?",
            "Output heater was tried by Wren.");
    assertThat(proofs())
        .extracting(ProofTried::proof)
        .containsExactly(
            Proof.HEARTBEAT_STOPPED,
            Proof.RCD_BUTTON,
            Proof.RCD_INSTRUMENT,
            Proof.FAN_UNPLUGGED,
            Proof.CONTACTOR_BRIDGED,
            Proof.FROST_THERMOSTAT,
            Proof.HIGH_LIMIT);
    ProofTried limit = proofs().get(6);
    assertThat(limit.temperatureMilliC()).isEqualTo(41_500);
    assertThat(limit.probe()).isEqualTo("air");
    assertThat(limit.how()).isEqualTo("by Rook, electrician, with a lamp");
    assertThat(proofs().get(0).seconds()).isEqualTo(27);
    assertThat(journal()).extracting(Recorded::by).containsOnly("Wren");
    assertThat(isControlled()).isTrue();
  }

  @Test
  void theFanIsOnBeforeTheHeater_besideIt_andAfterIt() {
    commission();
    List<String> switched = machine.switched().stream().filter(s -> !s.startsWith("24")).toList();
    int on = switched.indexOf("17 on");
    assertThat(switched.subList(0, on)).contains("22 on");
    assertThat(switched.get(on - 1)).isEqualTo("22 on");
    int lastOn = switched.lastIndexOf("17 on");
    assertThat(lastOn).isGreaterThan(on);
    List<String> after = switched.subList(switched.indexOf("17 off"), switched.size());
    assertThat(after).containsSubsequence("17 off", "22 on", "22 off");
  }

  @Test
  void aFanThatDidNotRun_leavesTheHeaterUntried() throws Exception {
    answers.put("Switch on fan", "no");

    CommandRun run = commission();

    assertThat(run.exit()).isEqualTo(ExitCode.NOT_WELL);
    assertThat(run.out())
        .contains("Output fan was not noted as tried.")
        .contains("the fan that carries its heat away was not seen to run");
    assertThat(machine.switched()).doesNotContain("17 on");
    assertThat(isControlled()).isFalse();
  }

  @Test
  void whatWasNotShown_leavesTheRoomObserved_untilAnotherDay() throws Exception {
    answers.put("the sheet with its times", "not today");

    CommandRun run = commission();

    assertThat(run.exit()).isEqualTo(ExitCode.NOT_WELL);
    assertThat(run.out())
        .contains(
            "Output heater was not noted as tried: its room is only observed until it was shown"
                + " that the residual-current devices trip by an instrument.");
    assertThat(isControlled()).isFalse();
    assertThat(check()).contains("Warning: Room store: nobody has shown that the residual-current");

    answers.remove("the sheet with its times");
    time.advance(Duration.ofDays(3));
    CommandRun second = commission();

    assertThat(second.exit()).isZero();
    assertThat(second.out()).doesNotContain("Press the button of each.");
    assertThat(isControlled()).isTrue();
    assertThat(check()).doesNotContain("nobody has shown", "was last shown");
  }

  @Test
  void heatWithoutAProvenLimit_needsTheOwnersWord_toTheLetter() throws Exception {
    answers.put("the high limit opens and stays open", "no");
    answers.put("If you are the owner", "ok");
    commission();
    assertThat(isControlled()).isFalse();

    answers.put("If you are the owner", "I heat without a proven limit");
    commission();

    assertThat(isControlled()).isTrue();
    assertThat(proofs()).last().extracting(ProofTried::proof).isEqualTo(Proof.HEAT_WITHOUT_LIMIT);
    assertThat(check())
        .contains("nobody has shown that the high limit opens")
        .contains("heats without a proven high limit, by the word of Wren");
  }

  @Test
  void theOwnersWord_standsForTheLimitAlone() throws Exception {
    answers.put("the high limit opens and stays open", "no");
    answers.put("Press the button", "no");
    answers.put("If you are the owner", "I heat without a proven limit");

    CommandRun run = commission();

    assertThat(run.out()).doesNotContain("If you are the owner");
    assertThat(isControlled()).isFalse();
  }

  @Test
  void aHeartThatTookTooLongToStop_isNotShown() throws Exception {
    untilAnswer = Duration.ofSeconds(40);

    CommandRun run = commission();

    assertThat(run.out()).contains("Output heartbeat was not noted as tried.");
    assertThat(isControlled()).isFalse();
  }

  @Test
  void anAnswerInOwnWords_cannotBeLeftOut() throws Exception {
    answers.put("How was it tried", "");
    commission();
    assertThat(proofs()).extracting(ProofTried::proof).containsExactly(Proof.HEARTBEAT_STOPPED);
    assertThat(isControlled()).isFalse();
  }

  @Test
  void answersThatEnd_switchNothingMore() throws Exception {
    answers.put("Did the heartbeat relay close", "\u0004");
    CommandRun run = commission();
    assertThat(run.exit()).isEqualTo(ExitCode.NOT_WELL);
    assertThat(machine.switched()).doesNotContain("17 on", "22 on");
    assertThat(journal()).isEmpty();
  }

  @Test
  void aLineThatCannotBeHad_saysSo_andTheOthersAreTried() throws Exception {
    machine.breakLine(17);
    CommandRun run = commission();
    assertThat(run.exit()).isEqualTo(ExitCode.NOT_WELL);
    assertThat(run.out())
        .contains("Output heater could not be tried: relay heater cannot have GPIO 17");
    assertThat(tried()).containsExactly("heartbeat", "fan");
  }

  @Test
  void afterAYear_isAskedForAgain_withLastYearsResultBeside_andTheRoomRunsOn() throws Exception {
    commission();
    time.advance(Duration.ofDays(370));
    assertThat(isControlled()).isTrue();
    assertThat(check())
        .contains(
            "Warning: Room store: that the high limit opens and stays open until its button is"
                + " pressed was last shown on 2026-11-01 by Wren: 41.5 C, beside probe air, by"
                + " Rook");

    answers.put("At what temperature did it open?", "47");
    assertThat(commission().exit()).isZero();

    assertThat(check()).doesNotContain("was last shown");
    ProofState limit =
        states().stream().filter(s -> s.proof() == Proof.HIGH_LIMIT).findFirst().orElseThrow();
    assertThat(limit.results()).hasSize(2);
    assertThat(limit.results().get(0)).contains("47.0 C");
    assertThat(limit.results().get(1)).contains("41.5 C");
  }

  @Test
  void aHeaterOnAnotherLine_isAnotherHeater() throws Exception {
    commission();
    BoardFile.in(
        folder, "[heartbeat]\nline = 24\n", BoardFile.AIR, BoardFile.heater(27), BoardFile.fan(22));
    assertThat(isControlled()).isFalse();
    assertThat(states().stream().filter(ProofState::isShown).map(ProofState::proof))
        .containsExactly(Proof.HEARTBEAT_STOPPED);
  }

  private CommandRun commission() {
    StringWriter screen = new StringWriter();
    Attendance attendance =
        new Attendance(
            settings -> new RealBoard(settings, () -> machine),
            millis -> {},
            time,
            new Reader(screen));
    return run(new CommissionCommand(attendance), screen, "--by", "Wren");
  }

  private String check() {
    return run(new CheckCommand(() -> time.now().at()), new StringWriter()).out();
  }

  private CommandRun run(Object command, StringWriter out, String... args) {
    StringWriter err = new StringWriter();
    CommandLine line =
        new CommandLine(command).setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--settings", file.path().toString()));
    return new CommandRun(line.execute(all.toArray(String[]::new)), out.toString(), err.toString());
  }

  private boolean isControlled() {
    return TriedParts.in(settings()).rooms().stream().noneMatch(room -> room.observeOnly());
  }

  private Settings settings() {
    return file.settings();
  }

  private List<ProofState> states() throws IOException {
    return SafetyProofs.of(settings(), Lots.standing(journal()), time.now().at());
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
    return journal().stream()
        .filter(said -> said.entry() instanceof OutputTried)
        .map(said -> ((OutputTried) said.entry()).output())
        .toList();
  }

  private List<ProofTried> proofs() throws IOException {
    return journal().stream()
        .filter(said -> said.entry() instanceof ProofTried)
        .map(said -> (ProofTried) said.entry())
        .toList();
  }

  /** Reads the last question off the screen and answers it; yes where nothing else is meant. */
  private final class Reader extends InputStream {
    private final StringWriter screen;
    private boolean isGone;
    private int read;

    Reader(StringWriter screen) {
      this.screen = screen;
    }

    @Override
    public int read() {
      throw new UnsupportedOperationException("a terminal is read by the line");
    }

    @Override
    public int read(byte[] into, int from, int most) {
      String shown = screen.toString();
      String question = shown.substring(read);
      read = shown.length();
      Optional<String> own =
          answers.entrySet().stream()
              .filter(answer -> question.contains(answer.getKey()))
              .map(Map.Entry::getValue)
              .findFirst();
      isGone |= own.filter("\u0004"::equals).isPresent();
      if (isGone) {
        return -1;
      }
      time.advance(untilAnswer);
      byte[] bytes = (own.orElse("yes") + "\n").getBytes(Charset.defaultCharset());
      System.arraycopy(bytes, 0, into, from, bytes.length);
      return bytes.length;
    }
  }
}
