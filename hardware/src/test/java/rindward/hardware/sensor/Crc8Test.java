package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.hardware.Any;
import rindward.hardware.Seeded;

class Crc8Test {
  // BEEF: data sheet SHT3x-DIS v5, section 4.12. The digits 1 to 9: the catalogue's check value of
  // CRC-8/NRSC-5, which has the same parameters. The others were computed by another program.
  @ParameterizedTest
  @CsvSource({
    "BEEF, 92",
    "0000, 81",
    "FFFF, AC",
    "6666, 93",
    "8000, A2",
    "CCCC, A5",
    "66A4, B6",
    "B333, AB",
    "313233343536373839, F7"
  })
  void sensirion_agreesWithTheDataSheet(String bytes, String crc) {
    byte[] message = Hex.bytes(bytes);
    assertThat(Crc8.sensirion(message, 0, message.length)).isEqualTo(Integer.parseInt(crc, 16));
  }

  // 021CB801: Maxim Application Note 27, the ROM of its example, least significant byte first. The
  // digits 1 to 9: the catalogue's check value of CRC-8/MAXIM-DOW. The others were computed.
  @ParameterizedTest
  @CsvSource({
    "021CB801000000, A2",
    "313233343536373839, A1",
    "50054B467FFF0C10, 1C",
    "0000000000000000, 00",
    "FFFFFFFFFFFFFFFF, C9",
    "1212A2145F12AA12, 6D"
  })
  void oneWire_agreesWithTheApplicationNote(String bytes, String crc) {
    byte[] message = Hex.bytes(bytes);
    assertThat(Crc8.oneWire(message, 0, message.length)).isEqualTo(Integer.parseInt(crc, 16));
  }

  @Seeded
  void everySingleBrokenBit_changesBothChecksums(Any any) {
    byte[] message = any.bytes(8);
    int bit = any.intBetween(0, 63);
    byte[] broken = message.clone();
    broken[bit / 8] ^= (byte) (1 << bit % 8);

    assertThat(Crc8.sensirion(broken, 0, 8)).isNotEqualTo(Crc8.sensirion(message, 0, 8));
    assertThat(Crc8.oneWire(broken, 0, 8)).isNotEqualTo(Crc8.oneWire(message, 0, 8));
  }
}
