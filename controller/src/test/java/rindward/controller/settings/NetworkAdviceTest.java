package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What strangers in the network could read or say, each told in one sentence. */
class NetworkAdviceTest {
  private static final Path EXAMPLE = Path.of("examples/shed.toml");
  private static final String BROKER =
      "\n[broker]\nhost = \"HOST\"\ntls = TLS\nuser = \"shed\"\npassword_file = \"word\"\n"
          + "[mqtt]\ncommands = true\n";

  @TempDir private Path folder;

  @Test
  void theExample_showsItselfToThisMachineOnly_andSaysNothing() throws IOException {
    assertThat(adviceOf("")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0.0.0.0, true", "192.168.1.20, true", "::, true", "shed.farm.example, true",
    "127.0.0.1, false", "127.4.5.6, false", "::1, false", "localhost, false"
  })
  void anOpenAddressWithoutHttps(String address, boolean isSaid) throws IOException {
    List<String> advice = adviceOf("", "127.0.0.1", address);

    assertThat(advice)
        .hasSize(isSaid ? 1 : 0)
        .allMatch(said -> said.startsWith("dashboard.address was '" + address + "' but without"));
  }

  @Test
  void wordsOverAnOpenBroker_andItsPassword() throws IOException {
    secret("word", "rw-r-----");
    assertThat(adviceOf(broker("192.168.1.9", false)))
        .satisfiesExactly(
            said -> assertThat(said).startsWith("mqtt.commands was 'true' but"),
            said -> assertThat(said).startsWith("broker.tls was 'false' but"));
    assertThat(adviceOf(broker("192.168.1.9", true))).isEmpty();
    assertThat(adviceOf(broker("127.0.0.1", false))).isEmpty();
  }

  @Test
  void aSecretThatOthersMayRead_orThatIsNotThere() throws IOException {
    assertThat(adviceOf(broker("127.0.0.1", false)))
        .singleElement()
        .asString()
        .startsWith("broker.password_file was '" + folder.resolve("word"))
        .endsWith("but there must be such a file.");
    secret("word", "rw-r--r--");
    assertThat(adviceOf(broker("127.0.0.1", false)))
        .singleElement()
        .asString()
        .contains("every user of this machine may read it")
        .doesNotContain("secret");
  }

  @Test
  void aMailPasswordInTheClear() throws IOException {
    secret("mailword", "rw-------");
    String mail =
        "\n[mail]\nhost = \"mail.farm.example\"\nsecurity = \"none\"\nuser = \"shed\"\n"
            + "password_file = \"mailword\"\nfrom = \"shed@farm.example\"\n";

    assertThat(adviceOf(mail))
        .singleElement()
        .asString()
        .startsWith("mail.security was 'none' but the password goes through the network");
    assertThat(adviceOf(mail.replace("none", "starttls"))).isEmpty();
  }

  private static String broker(String host, boolean isEncrypted) {
    return BROKER.replace("HOST", host).replace("TLS", Boolean.toString(isEncrypted));
  }

  private void secret(String name, String rights) throws IOException {
    Path file = Files.writeString(folder.resolve(name), "secret");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(rights));
  }

  private List<String> adviceOf(String added, String... change) throws IOException {
    String text = Files.readString(EXAMPLE);
    if (change.length > 0) {
      text = text.replaceFirst(change[0], change[1]);
    }
    Path file = Files.writeString(folder.resolve("shed.toml"), text + added);
    Problems problems = new Problems();
    return NetworkAdvice.of(
        SettingsReader.read(file, problems)
            .orElseThrow(() -> new AssertionError(problems.toString())));
  }
}
