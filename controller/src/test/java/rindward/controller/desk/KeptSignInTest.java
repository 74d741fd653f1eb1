package rindward.controller.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.store.Database;
import rindward.controller.store.SignInStore;
import rindward.dashboard.signin.AuditEntry;
import rindward.dashboard.signin.Person;
import rindward.dashboard.signin.Role;
import rindward.dashboard.signin.Token;

/** What the dashboard hands over for keeping comes back as it was. */
class KeptSignInTest {
  private static final Instant AT = Instant.parse("2026-10-03T09:15:30.250Z");

  @Test
  void everythingComesBackAsItWas(@TempDir Path folder) {
    try (Database database = new Database(folder.resolve("shed.sqlite"))) {
      KeptSignIn desk = new KeptSignIn(new SignInStore(database));
      Person wren = new Person("Wren", Role.OWNER, "$2a$04$hash");
      Token phone =
          new Token("hash", "id", "Wren", Role.HELPER, true, "iPhone", AT, AT.plusSeconds(60));
      desk.keep(wren);
      desk.keep(phone);
      desk.note(new AuditEntry(0, AT, "Wren", "signed in"));
      assertThat(desk.people()).containsExactly(wren);
      assertThat(desk.tokens()).containsExactly(phone);
      assertThat(desk.audit(Long.MAX_VALUE, 10))
          .containsExactly(new AuditEntry(1, AT, "Wren", "signed in"));
      desk.forgetToken("hash");
      desk.forget("Wren");
      assertThat(desk.people()).isEmpty();
      assertThat(desk.tokens()).isEmpty();
    }
  }
}
