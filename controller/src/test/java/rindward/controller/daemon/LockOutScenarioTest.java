package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.Alarm;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.diagnosis.UncommandedHeat;
import rindward.controller.journal.AlarmAnswer;
import rindward.controller.journal.AlarmAnswered;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.settings.Settings;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.ShedFault.Kind;
import rindward.hardware.shed.Weather;

/** A heater that did not stop stays cut off until somebody who stands beside the board says so. */
class LockOutScenarioTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");
  private static final Weather WEATHER = GeneratedWeather.temperate(7);
  private static final AlarmId RUNAWAY =
      new AlarmId(AlarmKind.HEATER_RUNAWAY, "storage", "storage-heater");

  @TempDir private Path folder;
  private Settings settings;
  private SimulatedRun rehearsal;
  private ShedFault welded;
  private int requests;

  @BeforeEach
  void aWeldedContactThatWasSeen_andWasReplacedSince() throws Exception {
    settings = SimulatedRunScenarioTest.settingsAt(folder);
    rehearsal = new SimulatedRun(settings, WEATHER, START);
    say(new Harvested("BN1", "butternut", "Fallow Bell", 200, "storage", START));
    rehearsal.load("storage", "BN1", 300);
    rehearsal.heed();
    rehearsal.advance(Duration.ofHours(36));
    while (!isHeating()) {
      rehearsal.advance(Duration.ofSeconds(10));
    }
    welded = ShedFault.of(Kind.OUTPUT_STUCK_ON, "storage-heater");
    rehearsal.shed().inject(welded);
    while (isHeating()) {
      rehearsal.advance(Duration.ofSeconds(10));
    }
    for (int minute = 0; !isCut() && minute < 60; minute++) {
      rehearsal.advance(Duration.ofMinutes(1));
    }
    rehearsal.heed();
    assertThat(isCut()).isTrue();
  }

  @AfterEach
  void close() {
    rehearsal.daemon().close();
  }

  @Test
  void isLiftedByTheCodeOnTheBoard_andByNothingElse() throws Exception {
    mend();
    answer(AlarmAnswer.RESET, null);
    answer(AlarmAnswer.RESET, "000000".equals(code()) ? "111111" : "000000");
    answer(AlarmAnswer.OUT_OF_SERVICE, null);
    answer(AlarmAnswer.ACKNOWLEDGED, null);
    assertThat(isCut()).isTrue();
    assertThat(alarm().lasts()).isTrue();
    assertThat(alarm().isOutOfService()).isFalse();

    answer(AlarmAnswer.RESET, " " + code().substring(0, 3) + "-" + code().substring(3) + " ");
    assertThat(isCut()).isFalse();
    assertThat(file()).doesNotExist();
  }

  @Test
  void theCodeDoesNotLiftIt_whileTheHeaterStillGoesOn() throws Exception {
    answer(AlarmAnswer.RESET, code());
    assertThat(isCut()).isTrue();
    mend();
    assertThat(isCut()).isTrue();
    answer(AlarmAnswer.RESET, code());
    assertThat(isCut()).isFalse();
  }

  @Test
  void takingItOutOfServiceNeedsTheCodeToo_forItGivesTheHeatBack() throws Exception {
    answer(AlarmAnswer.OUT_OF_SERVICE, code());
    assertThat(isCut()).isFalse();
  }

  @Test
  void fiveWrongCodes_andThereIsAnother() throws Exception {
    mend();
    String first = code();
    for (int i = 0; i < 5; i++) {
      answer(AlarmAnswer.RESET, first.equals("00000" + i) ? "999999" : "00000" + i);
    }
    assertThat(code()).isNotEqualTo(first);
    answer(AlarmAnswer.RESET, first);
    assertThat(isCut()).isTrue();
    answer(AlarmAnswer.RESET, code());
    assertThat(isCut()).isFalse();
  }

  @Test
  void standsOverARestart_andOverANewRecord() throws Exception {
    mend();
    String code = code();
    restart();
    assertThat(isCut()).isTrue();
    assertThat(code()).isEqualTo(code);

    rehearsal.daemon().close();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path lost : files.filter(f -> f.getFileName().toString().contains(".db")).toList()) {
        if (!lost.equals(file())) {
          Files.delete(lost);
        }
      }
    }
    restart();
    assertThat(isCut()).isTrue();
    answer(AlarmAnswer.RESET, code);
    assertThat(isCut()).isFalse();
    restart();
    assertThat(isCut()).isFalse();
  }

  @Test
  void onlyTheProgramsOwnUserReadsTheCode_andTheRecordDoesNotHoldIt() throws Exception {
    assertThat(Files.getPosixFilePermissions(file()))
        .isEqualTo(PosixFilePermissions.fromString("rw-------"));
    rehearsal.daemon().flush();
    for (String ending : new String[] {"", "-wal"}) {
      Path record = settings.store().resolveSibling(settings.store().getFileName() + ending);
      String bytes = Files.readString(record, java.nio.charset.StandardCharsets.ISO_8859_1);
      assertThat(bytes).doesNotContain(code());
    }
  }

  @Test
  void aFileThatSaysNothing_liftsNothing() throws Exception {
    mend();
    rehearsal.daemon().close();
    Files.writeString(file(), "12 heater-runaway@storage\n\u0000\u0000 since wrong\n");
    restart();
    rehearsal.heed();
    assertThat(isCut()).isTrue();
    answer(AlarmAnswer.RESET, code());
    assertThat(isCut()).isFalse();
  }

  private void mend() throws Exception {
    rehearsal.shed().clear(welded);
    rehearsal.advance(Duration.ofHours(4));
    assertThat(alarm().condition().active()).isFalse();
  }

  private void restart() throws Exception {
    Instant later = rehearsal.now().plus(Duration.ofMinutes(2));
    rehearsal.daemon().close();
    rehearsal = new SimulatedRun(settings, WEATHER, later);
    rehearsal.advance(Duration.ofMinutes(1));
  }

  private void answer(AlarmAnswer answer, @Nullable String code) throws Exception {
    say(new AlarmAnswered(RUNAWAY.key(), answer, null, rehearsal.now(), code));
    rehearsal.heed();
    rehearsal.advance(Duration.ofSeconds(20));
    rehearsal.heed();
  }

  private void say(Entry entry) {
    String request = "r" + rehearsal.now() + requests++;
    assertThat(
            rehearsal
                .daemon()
                .door()
                .say(entry, "Wren", request, OptionalLong.empty(), rehearsal.now())
                .refusal())
        .isEmpty();
  }

  private Path file() {
    return settings.store().resolveSibling(settings.store().getFileName() + ".lockout");
  }

  private String code() throws IOException {
    Matcher line =
        Pattern.compile("(?m)^([0-9]{6}) " + RUNAWAY.key()).matcher(Files.readString(file()));
    if (!line.find()) {
      throw new NoSuchFileException(file().toString());
    }
    return line.group(1);
  }

  private Alarm alarm() {
    return rehearsal.daemon().latest().judgement().alarms().alarm(RUNAWAY);
  }

  /** Tells whether the heartbeat has stopped, so that the relay before all heaters opens. */
  private boolean isCut() {
    return UncommandedHeat.isIn(rehearsal.daemon().latest());
  }

  private boolean isHeating() {
    return rehearsal.daemon().latest().rooms().get(1).isOn(OutputKind.HEATER);
  }
}
