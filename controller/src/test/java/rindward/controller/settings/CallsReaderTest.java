package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.controller.alarm.Priority;
import rindward.controller.notice.MailSettings.Security;

class CallsReaderTest {
  private static final Path EXAMPLE = Path.of("examples/shed.toml");

  @TempDir private Path folder;

  @Test
  void theExampleWithoutItsMarks_isReadAsItStands() throws Exception {
    Calls calls = read(uncommented()).calls();

    assertThat(calls.line().persons()).extracting(p -> p.name()).containsExactly("Wren", "Rook");
    assertThat(calls.line().persons().get(0).channels()).containsExactly("mail", "mqtt");
    assertThat(calls.line().persons().get(0).digestAt()).isEqualTo(LocalTime.of(7, 0));
    assertThat(calls.line().persons().get(1).wants()).isEqualTo(Set.of(Priority.WAKE));
    assertThat(calls.line().answerWithin()).isEqualTo(Duration.ofMinutes(10));
    assertThat(calls.alarmsPage()).isEqualTo("http://192.168.1.20:8420/alarms");
    assertThat(Objects.requireNonNull(calls.mail()).port()).isEqualTo(465);
    assertThat(calls.mail().security()).isEqualTo(Security.TLS);
    assertThat(calls.publishes()).isTrue();
    assertThat(calls.takesCommands()).isFalse();
    assertThat(Objects.requireNonNull(calls.alive()).every()).isEqualTo(Duration.ofMinutes(5));
  }

  @Test
  void theExampleAsItStands_callsNobody() throws Exception {
    Calls calls = read(Files.readString(EXAMPLE)).calls();
    assertThat(calls.line().persons()).isEmpty();
    assertThat(calls.publishes()).isFalse();
  }

  @Test
  void aPasswordIsReadFromItsFile_andNeverShown() throws Exception {
    Files.writeString(folder.resolve("mail-password"), "russet\n");
    Calls.MailSetting mail = Objects.requireNonNull(read(uncommented()).calls().mail());
    assertThat(mail.open(name -> null).password()).isEqualTo("russet");
    assertThat(mail.toString() + mail.open(name -> null)).doesNotContain("russet");
  }

  @Test
  void aPasswordThatIsNowhere_isToldWithItsKeyAndNothingElse() throws Exception {
    Calls.MailSetting mail = Objects.requireNonNull(read(uncommented()).calls().mail());
    assertThatThrownBy(() -> mail.open(name -> null))
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("mail.password_file was '")
        .hasMessageEndingWith("' but it must be a file that we may read");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "digest_at = \"07:00\" | digest_at = \"7\" | people.Wren.digest_at was '7' but it must be a"
            + " time of day, as \"07:00\"",
        "by = [\"webhook\"] | by = [\"pigeon\"] | people.Rook.by was 'pigeon' but it must be one of"
            + " mail, webhook, mqtt",
        "wants = [\"wake\"] | wants = [\"all\"] | people.Rook.wants was 'all' but it must be one of"
            + " wake, digest, news",
        "every = \"5m\" | every = \"5s\" | alive.every was '5s' but it must be a time from 1m to"
            + " 1d, written like \"90s\", \"5m\", \"2h\" or \"10d\"",
        "user = \"shed\" | usr = \"shed\" | mail.usr is not a key known here; did you mean 'user'?",
        "from = \"shed@hollin-bank.example\" | from = \"shed\" | mail.from was 'shed' but it must"
            + " be an address, as \"wren@farm.example\""
      })
  void aSlip_isToldInOneSentence(String was, String slip, String sentence) throws Exception {
    Problems problems = new Problems();
    Path file = folder.resolve("shed.toml");
    Files.writeString(file, uncommented().replaceFirst(Pattern.quote(was), slip));
    assertThat(SettingsReader.read(file, problems)).isEmpty();
    assertThat(problems.list().stream().map(Problem::toString)).anyMatch(p -> p.endsWith(sentence));
  }

  private Settings read(String text) throws IOException {
    Path file = folder.resolve("shed.toml");
    Files.writeString(file, text);
    Problems problems = new Problems();
    return SettingsReader.read(file, problems)
        .orElseThrow(() -> new AssertionError(problems.list().toString()));
  }

  private static String uncommented() throws IOException {
    return Files.readString(EXAMPLE)
        .lines()
        .map(line -> line.startsWith("#|") ? line.substring(2) : line)
        .collect(Collectors.joining("\n"));
  }
}
