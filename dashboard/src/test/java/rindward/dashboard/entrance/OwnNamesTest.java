package rindward.dashboard.entrance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By which names the shed may be called, and by which nobody calls it with honest intent. */
class OwnNamesTest {
  private final OwnNames names = new OwnNames(List.of("shed.farm.example", "Board", "203.0.113.9"));

  @ParameterizedTest
  @CsvSource({
    "192.168.1.20:8420, 192.168.1.20",
    "192.168.1.20, 192.168.1.20",
    "[fd00::1]:8420, fd00:0:0:0:0:0:0:1",
    "[FD00::1], fd00:0:0:0:0:0:0:1%2",
    "localhost:8420, 127.0.0.1",
    "LOCALHOST, 0:0:0:0:0:0:0:1",
    "shed.farm.example, 192.168.1.20",
    "Shed.Farm.Example.:443, 192.168.1.20",
    "board:8420, 192.168.1.20",
    "203.0.113.9:80, 192.168.1.20"
  })
  void ownNamesAndTheAddressThatWasCalled(String host, String called) {
    assertThat(names.admits(host, called)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "elsewhere.example:8420, 192.168.1.20",
    "192.168.1.21:8420, 192.168.1.20",
    "192.168.1.20.elsewhere.example, 192.168.1.20",
    "board.elsewhere.example, 192.168.1.20",
    "localhost.elsewhere.example, 127.0.0.1",
    "[fd00::2]:8420, fd00:0:0:0:0:0:0:1",
    "'', 192.168.1.20"
  })
  void anythingElse(String host, String called) {
    assertThat(names.admits(host, called)).isFalse();
  }
}
