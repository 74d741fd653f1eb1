package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.shed.Attendance;
import rindward.controller.command.shed.CommissionCommand;
import rindward.controller.command.shed.OutputTrial;
import rindward.controller.command.shed.TriedParts;
import rindward.controller.daemon.RealBoard;
import rindward.controller.journal.Proof;
import rindward.controller.journal.ProofTried;
import rindward.controller.settings.BoardFile;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;

/**
 * A commissioning of the simulated shed, wired as the page draws it. Whoever answers goes by what
 * the shed's own meters say, and agrees to nothing else.
 */
class CommissionedShedScenarioTest {
  @TempDir private Path folder;
  private WiredShed shed;
  private BoardFile file;

  @BeforeEach
  void aStoreThatNobodyHasCommissioned() throws IOException {
    Path example = folder.resolve("shed.toml");
    Files.writeString(example, Files.readString(Path.of("examples/shed.toml")));
    Settings simulated = SettingsReader.read(example, new Problems()).orElseThrow();
    shed = new WiredShed(simulated, Instant.parse("2026-09-01T08:00:00Z"));
    file =
        BoardFile.in(
            folder,
            "[heartbeat]\nline = " + WiredShed.HEARTBEAT + "\n",
            BoardFile.AIR,
            BoardFile.heater(WiredShed.HEATER),
            BoardFile.fan(WiredShed.FAN));
  }

  @Test
  void wiredAsDrawn_everyProofIsShown_andTheRoomIsControlled() throws IOException {
    String told = walk(ExitCode.FINE);

    assertThat(told).contains("Everything heavy was open after 27 s.");
    assertThat(proofs())
        .containsExactly(
            Proof.HEARTBEAT_STOPPED,
            Proof.RCD_BUTTON,
            Proof.RCD_INSTRUMENT,
            Proof.FAN_UNPLUGGED,
            Proof.CONTACTOR_BRIDGED,
            Proof.FROST_THERMOSTAT,
            Proof.HIGH_LIMIT);
    assertThat(isControlled()).isTrue();
    assertThat(shed.secondsOn("heater")).isBetween(4.0, 40.0);
  }

  /**
   * What 0.1.0 did: the air-flow switch of WIRING.md cannot close, and somebody would bridge it.
   */
  @Test
  void aHeaterTriedAlone_staysCold_besideItsFanItRuns() throws IOException {
    Settings settings = file.settings();
    OutputTrial trial =
        new OutputTrial(
            new RealBoard(settings, () -> shed),
            shed::live,
            question -> true,
            () -> shed.time().now().nanos());
    trial.of(settings.outputs().get(0), List.of());
    assertThat(shed.secondsOn("heater")).isZero();

    trial.of(settings.outputs().get(0), List.of(settings.outputs().get(1)));
    assertThat(shed.secondsOn("heater")).isBetween(4.0, 6.0);
    assertThat(shed.secondsOn("circulation")).isGreaterThan(shed.secondsOn("heater") + 4);
  }

  @Test
  void anAirSwitchThatWasBridged_isFound_andTheRoomIsOnlyObserved() throws IOException {
    shed.isAirSwitchBridged = true;

    String told = walk(ExitCode.NOT_WELL);

    assertThat(told).contains("until it was shown that the heater stays off while its fan is off");
    assertThat(isControlled()).isFalse();
  }

  @Test
  void aContactorThatDoesNotOpenWithTheHeart_isFound() throws IOException {
    shed.isHeartbeatContactorWelded = true;

    String told = walk(ExitCode.NOT_WELL);

    assertThat(told).contains("Output heartbeat was not noted as tried.");
    assertThat(proofs()).doesNotContain(Proof.HEARTBEAT_STOPPED, Proof.CONTACTOR_BRIDGED);
    assertThat(isControlled()).isFalse();
  }

  private String walk(int exit) throws IOException {
    StringWriter screen = new StringWriter();
    StringWriter err = new StringWriter();
    Attendance attendance =
        new Attendance(
            settings -> new RealBoard(settings, () -> shed),
            shed::live,
            shed.time(),
            new Person(screen));
    int ended =
        new CommandLine(new CommissionCommand(attendance))
            .setOut(new PrintWriter(screen))
            .setErr(new PrintWriter(err))
            .execute("--by", "Wren", "--settings", file.path().toString());
    assertThat(err.toString()).isEmpty();
    assertThat(ended).as(screen.toString()).isEqualTo(exit);
    return screen.toString();
  }

  private boolean isControlled() {
    return TriedParts.in(file.settings()).rooms().stream().noneMatch(room -> room.observeOnly());
  }

  private List<Proof> proofs() throws IOException {
    Settings settings = file.settings();
    try (Database database = new Database(settings.store())) {
      return new EntryService(new Journal(database), settings.crops())
          .journal().stream()
              .filter(said -> said.entry() instanceof ProofTried)
              .map(said -> ((ProofTried) said.entry()).proof())
              .toList();
    }
  }

  /** Reads the question, does what it asks, looks at the meters, and answers. */
  private final class Person extends InputStream {
    private final StringWriter screen;
    private int read;
    private double heaterBefore;
    private double fanBefore;
    private boolean triesHeater;

    Person(StringWriter screen) {
      this.screen = screen;
    }

    @Override
    public int read() {
      throw new UnsupportedOperationException("a terminal is read by the line");
    }

    @Override
    public int read(byte[] into, int from, int most) {
      String question = screen.toString().substring(read);
      read = screen.toString().length();
      try {
        byte[] bytes = (answer(question) + "\n").getBytes(Charset.defaultCharset());
        System.arraycopy(bytes, 0, into, from, bytes.length);
        return bytes.length;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    private String answer(String question) throws IOException {
      double heated = shed.secondsOn("heater") - heaterBefore;
      double aired = shed.secondsOn("circulation") - fanBefore;
      heaterBefore += heated;
      fanBefore += aired;
      if (question.contains("Switch on ")) {
        triesHeater = question.contains("Switch on heater");
      }
      if (question.contains("Did the heartbeat relay close?")) {
        return yes(shed.isHeld());
      }
      if (question.contains("Is it open again?")) {
        for (int second = 0; shed.isHeld() && second < 60; second++) {
          shed.live(1_000);
        }
        return yes(!shed.isHeld());
      }
      if (question.contains("Did exactly this run")) {
        return yes(triesHeater == heated > 4 && aired > 4 && !shed.isHeating());
      }
      if (question.contains("Unplug the fan")) {
        shed.isFanUnplugged = true;
        return "yes";
      }
      if (question.contains("stay off all the time")) {
        shed.isFanUnplugged = false;
        return yes(heated == 0);
      }
      if (question.contains("contactor bridged")) {
        return yes(endsWithABridge());
      }
      if (question.contains("At what temperature") || question.contains("To what temperature")) {
        return "4.5";
      }
      return question.contains("How was it tried") ? "by Rook, with a lamp" : "yes";
    }

    /** The electrician holds K1 in, lets the heart stop, and opens the limit. */
    private boolean endsWithABridge() {
      shed.isContactorBridged = true;
      shed.live(60_000);
      boolean isEndedByHeart = !shed.isHeld();
      shed.isLimitOpen = true;
      boolean isEndedByLimit = !shed.isHeating();
      shed.isLimitOpen = false;
      shed.isContactorBridged = false;
      return isEndedByHeart && isEndedByLimit;
    }

    private String yes(boolean isSo) {
      return isSo ? "yes" : "no";
    }
  }
}
