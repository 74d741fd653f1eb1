package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import rindward.controller.settings.Accepted;

/** Where control keeps what nobody who may write the record may touch. */
class HostMachineTest {
  private static final Path STORE = Path.of("/var/lib/rindward/rindward.db");

  @Test
  void ofAnInstalledShed_itIsNotTheFolderOfTheRecord() {
    Path own = Accepted.placeOf(Path.of("/etc/rindward/rindward.toml")).getParent();

    assertThat(HostMachine.system(own).own(STORE, ".lockout"))
        .isEqualTo(Path.of("/var/lib/rindward-control/rindward.db.lockout"));
  }

  @Test
  void withoutAFolderOfItsOwn_itIsBesideTheRecord() {
    assertThat(HostMachine.none().own(STORE, ".lockout"))
        .isEqualTo(Path.of("/var/lib/rindward/rindward.db.lockout"));
  }
}
