package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.journal.Entry;
import rindward.controller.journal.LetRun;
import rindward.controller.journal.RoomAsked;
import rindward.controller.journal.SwitchedByHand;
import rindward.controller.room.ManualCommand;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.controller.settings.Settings;
import rindward.controller.store.LastingWords;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.GeneratedWeather;

/** What a hand switched off and which range was asked for outlive the record in which it stands. */
class LastingWordsScenarioTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");
  private static final Range ASKED =
      new Range(new Limits(14_000, 15_000), new Limits(60_000, 70_000));

  @TempDir private Path folder;
  private Path file;
  private Settings settings;
  private Time.Stepped time;

  @BeforeEach
  void read() throws Exception {
    settings = SimulatedRunScenarioTest.settingsAt(folder);
    file = folder.resolve("shed.toml");
    time = new Time.Stepped(START);
  }

  @Test
  void offByHand_andTheRangeAskedFor_outliveADamagedRecord() throws Exception {
    try (Daemon daemon = started()) {
      say(daemon, off());
      say(daemon, new RoomAsked("storage", ASKED, 0, false, time.now().at()));
      daemon.hear();
    }
    Files.writeString(settings.store(), "no database");
    time.advance(Duration.ofMinutes(5));

    try (Daemon daemon = started()) {
      assertThat(demand(daemon).range()).isEqualTo(ASKED);
      assertThat(demand(daemon).commands()).singleElement().matches(command -> !command.on());
      daemon.hear();
      assertThat(demand(daemon).range())
          .as("after a look at a journal begun anew")
          .isEqualTo(ASKED);
      assertThat(demand(daemon).commands()).hasSize(1);
    }
    try (Daemon daemon = started()) {
      assertThat(demand(daemon).range()).as("at the start after that").isEqualTo(ASKED);
    }
  }

  @Test
  void whatWasLetRunAgain_orIsOver_isOffNoLonger() throws Exception {
    try (Daemon daemon = started()) {
      say(daemon, off());
      daemon.hear();
      time.advance(Duration.ofMinutes(1));
      say(daemon, new LetRun("storage", OutputKind.HEATER, time.now().at()));
      daemon.hear();
    }
    Files.delete(settings.store());
    try (Daemon daemon = started()) {
      assertThat(demand(daemon).commands()).isEmpty();
      say(daemon, off());
      daemon.hear();
    }
    time.advance(Duration.ofHours(3));
    try (Daemon daemon = started()) {
      assertThat(demand(daemon).commands()).extracting(ManualCommand::kind).isEmpty();
    }
  }

  @Test
  void linesThatCannotBeRead_costNoOther() throws Exception {
    try (Daemon daemon = started()) {
      say(daemon, off());
      daemon.hear();
    }
    Path words = folder.resolve("shed.toml.accepted.words");
    Files.writeString(words, "not even JSON\n{}\n" + Files.readString(words));
    Files.delete(settings.store());

    try (Daemon daemon = started()) {
      assertThat(demand(daemon).commands()).hasSize(1);
    }
  }

  private Entry off() {
    Instant now = time.now().at();
    return new SwitchedByHand(
        "storage", OutputKind.HEATER, false, now.plus(Duration.ofHours(2)), now);
  }

  private Daemon started() throws Exception {
    Daemon daemon =
        new Daemon(
            settings,
            SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time),
            time,
            false);
    daemon.goBy(LastingWords.beside(file));
    return daemon;
  }

  private RoomDemand demand(Daemon daemon) {
    Room room =
        settings.rooms().stream().filter(r -> r.name().equals("storage")).findFirst().orElseThrow();
    return daemon.demands().of(room, time.now().at());
  }

  private void say(Daemon daemon, Entry entry) {
    assertThat(
            daemon
                .door()
                .say(
                    entry,
                    "Wren",
                    UUID.randomUUID().toString(),
                    OptionalLong.empty(),
                    time.now().at())
                .refusal())
        .isEmpty();
  }
}
