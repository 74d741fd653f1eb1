package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class W1SlaveTextTest {
  // Texts of real probes seen in public scripts; their checksums were verified again.
  @ParameterizedTest
  @CsvSource({
    "73 01 4b 46 7f ff 0d 10 41, 41, 23187",
    "1d 01 4b 46 7f ff 0c 10 dd, dd, 17812",
    "72 01 4b 46 7f ff 0e 10 57, 57, 23125",
    "51 01 4b 46 7f ff 0c 10 ab, ab, 21062"
  })
  void textOfARealProbe_isRead(String bytes, String crc, int temperatureMilliC) throws IOException {
    assertThat(W1SlaveText.parse(text(bytes, crc, "YES", bytes, temperatureMilliC)))
        .isEqualTo(new W1SlaveText(temperatureMilliC));
  }

  @Test
  void crcNo_isRefused_becauseTheSecondLineIsTheReadingBefore() {
    String old = "73 01 4b 46 7f ff 0d 10 41";

    refused(text("ff ff ff ff ff ff ff ff ff", "c9", "NO", old, 23_187), "checksum");
  }

  @Test
  void checksumIsVerifiedAgain_notTakenOnTrust() {
    String broken = "73 01 4b 46 7f ff 0d 10 42";

    refused(text(broken, "42", "YES", broken, 23_187), "checksum");
  }

  @Test
  void allZeros_passTheirChecksum_andAreRefused() {
    String zeros = "00 00 00 00 00 00 00 00 00";

    refused(text(zeros, "00", "YES", zeros, 0), "its data wire is held low");
  }

  @Test
  void secondLineOfAnotherAnswer_isRefused() {
    refused(
        text("73 01 4b 46 7f ff 0d 10 41", "41", "YES", "51 01 4b 46 7f ff 0c 10 ab", 21_062),
        "belongs to an earlier answer");
  }

  @Test
  void emptyOrForeignText_isRefusedAndQuoted() {
    refused("", "it gave no text");
    refused("21062\n", "its text was '21062'");
    refused("73 01 4b 46 7f ff 0d 10 41 : crc=41 YES\n", "but it must be that of a DS18B20");
  }

  static String text(String first, String crc, String word, String second, int milliC) {
    return first + " : crc=" + crc + " " + word + "\n" + second + " t=" + milliC + "\n";
  }

  private static void refused(String text, String because) {
    assertThatThrownBy(() -> W1SlaveText.parse(text))
        .isInstanceOf(IOException.class)
        .hasMessageContaining(because);
  }
}
