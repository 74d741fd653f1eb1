package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Forty files that a tired person may write and an electrician would not accept, each one slip away
 * from the example with real parts, and each with its sentence. Refused is what can never be right;
 * all else is said, and the shed starts.
 */
class UnsafeFilesTest {
  private static final Path EXAMPLE = Path.of("examples/board.toml");
  private static final LocalDate TODAY = LocalDate.of(2026, 10, 1);

  @TempDir private Path folder;

  private enum Answer {
    REFUSED,
    WARNED
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // Lines of I2C bus 1.
        "REFUSED|line = 17|line = 2|outputs.curing-heater.line was '2' but it must be another line",
        "REFUSED|line = 17|line = 3|outputs.curing-heater.line was '3' but it must be another line",
        "REFUSED|line = 5|line = 2|outputs.curing-circulation.line was '2' but it must be another",
        "REFUSED|line = 5|line = 3|outputs.curing-circulation.line was '3' but it must be another",
        "REFUSED|line = 24|line = 2|heartbeat.line was '2' but it must be another line, for a probe"
            + " of this file uses GPIO 2 and 3 as I2C bus 1",
        "REFUSED|line = 24|line = 3|heartbeat.line was '3' but it must be another line",
        // Lines of the 1-Wire bus and of the console, which a file cannot know to be moved.
        "WARNED|line = 17|line = 4|outputs.curing-heater.line was '4' but the 1-Wire probes of this"
            + " file use GPIO 4 unless their overlay names another",
        "WARNED|line = 5|line = 4|outputs.curing-circulation.line was '4' but the 1-Wire",
        "WARNED|line = 24|line = 4|heartbeat.line was '4' but the 1-Wire probes",
        "WARNED|line = 17|line = 14|outputs.curing-heater.line was '14' but the serial console uses"
            + " GPIO 14 and 15 unless it is switched off",
        "WARNED|line = 17|line = 15|outputs.curing-heater.line was '15' but the serial console",
        "WARNED|line = 5|line = 14|outputs.curing-circulation.line was '14' but the serial console",
        "WARNED|line = 24|line = 14|heartbeat.line was '14' but the serial console",
        "WARNED|line = 24|line = 15|heartbeat.line was '15' but the serial console",
        "WARNED|line = 17|line = 7|outputs.curing-heater.line was '7' (on when high) but it may be"
            + " on while the board starts",
        "WARNED|active = \"low\"|active = \"high\"|outputs.curing-circulation.line was '5' (on when"
            + " high) but it may be on while the board starts",
        // A relay that hears itself.
        "REFUSED|\"store/heater/state\"|\"store/heater/command\"|outputs.storage-heater.state_topic"
            + " was 'store/heater/command' but it must differ from the command_topic of"
            + " outputs.storage-heater",
        "REFUSED|\"store/heater/state\"|\"store/fan/command\"|outputs.storage-heater.state_topic"
            + " was 'store/fan/command' but it must differ from the command_topic of"
            + " outputs.storage-circulation",
        "REFUSED|\"store/fan/state\"|\"store/fan/command\"|outputs.storage-circulation.state_topic"
            + " was 'store/fan/command' but it must differ",
        // Heat that nothing moves, and heat that nothing measures.
        "REFUSED|kind = \"circulation\"|kind = \"exhaust\"|rooms.curing.heater_needs_fan was 'true'"
            + " but the room has no output of kind",
        "WARNED|kind = \"circulation\"#2|kind = \"exhaust\"|rooms.storage.heater_needs_fan was left"
            + " out, and the room has a heater and no circulation fan",
        "REFUSED|`[outputs.storage-heater]\n"
            + "room = \"storage\"`|`[rooms.crate]\n"
            + "purpose = \"storage\"\n"
            + "temperature = [10, 13]\n"
            + "humidity = [50, 70]\n"
            + "[probes.crate]\n"
            + "room = \"crate\"\n"
            + "place = \"pulp\"\n"
            + "driver = \"1-wire\"\n"
            + "serial = \"28-0316a2791b00\"\n"
            + "[outputs.storage-heater]\n"
            + "room = \"crate\"`|rooms.crate.probe was only in a fruit but a room with a heater"
            + " must have one in its air",
        // Ranges that the limit would end.
        "WARNED|temperature = [27, 29]|temperature = [27, 41]|rooms.curing.temperature ends at 41 C"
            + " but must end below its high limit, 40 C",
        "WARNED|temperature = [27, 29]|temperature = [27, 40]|rooms.curing.temperature ends at 40"
            + " C",
        "WARNED|temperature = [10, 13]|temperature = [10, 45]|rooms.storage.temperature ends at 45",
        "WARNED|temperature = 40,|temperature = 28,|rooms.curing.temperature ends at 29 C but must"
            + " end below its high limit, 28 C",
        // What one contact is asked to switch.
        "WARNED|power_w = 750|power_w = 20000|outputs.curing-heater.power_w was '20000' but a"
            + " circuit of 16 A carries 3680 W at 230 V",
        "WARNED|power_w = 750|power_w = 3681|outputs.curing-heater.power_w was '3681' but",
        "WARNED|power_w = 25|power_w = 4000|outputs.curing-circulation.power_w was '4000' but",
        "WARNED|minimum_on = \"30s\"|minimum_on = \"0s\"|outputs.curing-heater.minimum_on was '0 s'"
            + " but a mechanical contact must rest at least 10 s",
        "WARNED|minimum_off = \"30s\"|minimum_off = \"0s\"|outputs.curing-heater.minimum_off was"
            + " '0",
        "WARNED|minimum_on = \"2m\"|minimum_on = \"9s\"|outputs.storage-heater.minimum_on was '9"
            + " s'",
        // What acts when this program does not.
        "WARNED|`[heartbeat]\nline = 24`||heartbeat is missing but a real heater must end when this"
            + " program hangs",
        "WARNED|high_limit =|# high_limit =|rooms.curing.high_limit is missing but a room with a"
            + " real heater must have one",
        "WARNED|high_limit =#2|# high_limit =|rooms.storage.high_limit is missing but",
        "WARNED|reset = \"by-hand\"|reset = \"by-itself\"|rooms.curing.high_limit.reset was"
            + " 'by-itself' but it must be by hand",
        "WARNED|, tried = 2026-09-01 }| }|rooms.curing.high_limit.tried is missing but",
        "WARNED|tried = 2026-09-01|tried = 2025-09-30|rooms.curing.high_limit.tried was"
            + " '2025-09-30' but it must be within the last year",
        "WARNED|tried = 2026-09-01|tried = 2026-10-02|rooms.curing.high_limit.tried was"
            + " '2026-10-02' but it must not be yet to come",
        "WARNED|high_limit = { temperature = 40|high_limit = { temperature = 55|"
            + "rooms.curing.high_limit.temperature was '55' but it must be at most 45 C",
      })
  void unsafeFile_hasItsSentence(Answer answer, String from, String to, String sentence)
      throws IOException {
    Problems problems = new Problems();
    Optional<Settings> settings = SettingsReader.read(changed(from, to), problems);

    assertThat(settings.isPresent()).isEqualTo(answer == Answer.WARNED);
    List<String> said =
        settings
            .map(known -> SafetyAdvice.of(known, TODAY))
            .orElseGet(() -> problems.list().stream().map(Problem::sentence).toList());
    assertThat(said).anySatisfy(one -> assertThat(one).contains(sentence));
  }

  @Test
  void examples_haveNothingUnsafe() {
    for (String name : List.of("board.toml", "shed.toml")) {
      Settings settings =
          SettingsReader.read(EXAMPLE.resolveSibling(name), new Problems()).orElseThrow();

      assertThat(SafetyAdvice.of(settings, TODAY)).isEmpty();
      assertThat(SettingsAdvice.of(settings)).isEmpty();
    }
  }

  @Test
  void linesOfABusThatTheFileDoesNotUse_areFree() throws IOException {
    Settings settings =
        BoardFile.in(folder, BoardFile.AIR, BoardFile.heater(2), BoardFile.fan(4)).settings();

    assertThat(SafetyAdvice.of(settings, TODAY)).noneMatch(said -> said.contains("1-Wire"));
  }

  /** An older file names no fan where the heater has its own, and no limit: it goes on starting. */
  @Test
  void fileOfTheFirstVersion_startsAndIsWarned() throws IOException {
    Settings settings = BoardFile.in(folder, BoardFile.AIR, BoardFile.heater(17)).settings();

    assertThat(SafetyAdvice.of(settings, TODAY))
        .hasSize(3)
        .anyMatch(said -> said.startsWith("rooms.store.heater_needs_fan was left out"))
        .anyMatch(said -> said.startsWith("rooms.store.high_limit is missing"))
        .anyMatch(said -> said.startsWith("heartbeat is missing"));
  }

  @Test
  void refusedFile_isStillSwitchedOff() throws IOException {
    Path file = changed("\"store/heater/state\"", "\"store/heater/command\"");

    assertThat(Wiring.of(file, Files.readString(file)).outputs())
        .anyMatch(output -> output.name().equals("storage-heater"));
  }

  /** Changes one place of the example; {@code #2} after the words means the second such place. */
  private Path changed(String from, String to) throws IOException {
    String text = Files.readString(EXAMPLE);
    String words = from.replaceFirst("#\\d$", "");
    int times = words.equals(from) ? 1 : from.charAt(from.length() - 1) - '0';
    int at = -1;
    for (int i = 0; i < times; i++) {
      at = text.indexOf(words, at + 1);
      assertThat(at).as(words).isNotNegative();
    }
    String other = to == null ? "" : to;
    return Files.writeString(
        folder.resolve("board.toml"),
        text.substring(0, at) + other + text.substring(at + words.length()));
  }
}
