package rindward.controller.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.daemon.SimulatedRun;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.SwitchedByHand;
import rindward.controller.journal.WorkAnnounced;
import rindward.controller.settings.Problems;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.samples.StoreHealth;
import rindward.controller.task.TaskState;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;

/** What one process tells is, field for field, what the other one hears. */
class ReportJsonTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");

  @TempDir private Path folder;
  private SimulatedRun shed;

  @BeforeEach
  void aShedWithAlarmsAndHandsOnIt() throws Exception {
    Path file = folder.resolve("shed.toml");
    Files.writeString(file, Files.readString(Path.of("examples/shed.toml")));
    shed =
        new SimulatedRun(
            SettingsReader.read(file, new Problems()).orElseThrow(),
            GeneratedWeather.temperate(7),
            START);
    say(new Harvested("KB1", "kabocha", "", 40, "storage", START));
    shed.shed().inject(ShedFault.of(ShedFault.Kind.PROBE_SILENT, "outdoor"));
    shed.advance(Duration.ofHours(2));
    say(
        new SwitchedByHand(
            "storage", OutputKind.CIRCULATION, true, shed.now().plusSeconds(600), shed.now()));
    say(new WorkAnnounced("storage", shed.now().plusSeconds(900), shed.now()));
    shed.advance(Duration.ofMinutes(1));
  }

  @AfterEach
  void close() {
    shed.daemon().close();
  }

  @Test
  void whatIsRead_isWhatWasWritten() throws Exception {
    ControlReport told = shed.daemon().view().latest();
    assertThat(told.snapshot().judgement().alarms().all()).isNotEmpty();
    assertThat(told.snapshot().rooms()).anyMatch(room -> !room.demand().commands().isEmpty());
    assertThat(told.heard()).isPositive();

    assertThat(read(ReportJson.write(told))).isEqualTo(told);
  }

  @Test
  void whatHappensRarely_isReadAsItWasWritten() throws Exception {
    ControlReport told = shed.daemon().view().latest();
    ControlReport rare =
        new ControlReport(
            told.told(),
            7,
            told.snapshot(),
            told.probes(),
            Set.of(AlarmId.of(AlarmKind.values()[0], "a room/with@signs")),
            new StoreHealth(3, 4, "it is full", "anew", "damaged", "no copy", "none elsewhere"),
            5,
            List.of(new ChannelState("mail", "it says \"no\"\n", 2)),
            List.of(new TaskState("flush", true, START, 9, 3, "\u00e9t\u00e9")));

    ControlReport heard = read(ReportJson.write(rare));

    assertThat(heard.store()).isEqualTo(rare.store());
    assertThat(heard.channels()).isEqualTo(rare.channels());
    assertThat(heard.tasks()).isEqualTo(rare.tasks());
    assertThat(heard.rewrites()).isEqualTo(5);
  }

  @Test
  void itIsOneLine_ofNoMoreThanATickIsWorth() {
    byte[] line = ReportJson.write(shed.daemon().view().latest());

    assertThat(new String(line, StandardCharsets.UTF_8).lines()).hasSize(1);
    assertThat(line.length).as("two rooms").isLessThan(40_000);
  }

  @Test
  void aLineOfAnotherVersion_isToldApartFromOneThatIsSpoilt() {
    byte[] newer = "{\"version\":2,\"report\":{\"new\":1}}".getBytes(StandardCharsets.UTF_8);
    assertThatThrownBy(() -> read(newer))
        .isInstanceOf(ReportJson.OtherVersion.class)
        .hasMessage("its reports are of version 2, this page reads 1");
    byte[] spoilt = "{\"version\":1,\"rep".getBytes(StandardCharsets.UTF_8);
    assertThatThrownBy(() -> read(spoilt)).isNotInstanceOf(ReportJson.OtherVersion.class);
  }

  private static ControlReport read(byte[] line) throws Exception {
    return ReportJson.read(line, line.length);
  }

  private void say(Entry entry) {
    shed.daemon()
        .door()
        .say(entry, "Wren", entry.subject() + shed.now(), OptionalLong.empty(), shed.now());
  }
}
