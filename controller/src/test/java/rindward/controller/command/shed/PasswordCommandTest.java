package rindward.controller.command.shed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.command.CommandRun;
import rindward.controller.command.OwnFarm;
import rindward.controller.desk.KeptSignIn;
import rindward.controller.store.Database;
import rindward.controller.store.SignInStore;
import rindward.dashboard.signin.AuditEntry;
import rindward.dashboard.signin.Person;
import rindward.dashboard.signin.Role;

/** A new password for somebody who forgot theirs. */
class PasswordCommandTest {
  private static final String FORGOTTEN = "a hash that nobody knows the password of";

  @TempDir private Path folder;
  private OwnFarm farm;

  @BeforeEach
  void farm() throws IOException {
    farm = OwnFarm.in(folder);
  }

  @Test
  void somebodyKnown_getsAPasswordThatIsShownOnceAndNotedWithoutIt() {
    keep(new Person("Wren", Role.OWNER, FORGOTTEN));

    String said = farm.done("password", "wren");

    assertThat(said).containsPattern("wren signs in with this password from now on: .{11}");
    String drawn = said.strip().substring(said.strip().length() - 11);
    try (Database database = new Database(folder.resolve("rindward.db"))) {
      KeptSignIn desk = new KeptSignIn(new SignInStore(database));
      assertThat(desk.people())
          .singleElement()
          .satisfies(
              wren -> {
                assertThat(wren.role()).isEqualTo(Role.OWNER);
                assertThat(wren.passwordHash()).isNotEqualTo(FORGOTTEN).doesNotContain(drawn);
              });
      List<AuditEntry> audit = desk.audit(Long.MAX_VALUE, 9);
      assertThat(audit).extracting(AuditEntry::who).containsExactly("Wren");
      assertThat(audit.get(0).what()).doesNotContain(drawn);
      assertThat(audit.get(0).at()).isAfter(Instant.parse("2026-01-01T00:00:00Z"));
    }
  }

  @Test
  void somebodyUnknown_isRefusedWithWhomThereIs() {
    keep(new Person("Wren", Role.OWNER, FORGOTTEN));
    CommandRun run = CommandRun.of("password", "--settings", farm.settings().toString(), "Rook");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).isEqualToIgnoringNewLines("NAME was 'Rook' but it must be one of: Wren");
  }

  @Test
  void nobodyYet_isToldHowTheFirstOwnerComes() {
    CommandRun run = CommandRun.of("password", "--settings", farm.settings().toString(), "Wren");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err()).contains("There is no database", "so nobody is known.");
  }

  private void keep(Person person) {
    try (Database database = new Database(folder.resolve("rindward.db"))) {
      new KeptSignIn(new SignInStore(database)).keep(person);
    }
  }
}
