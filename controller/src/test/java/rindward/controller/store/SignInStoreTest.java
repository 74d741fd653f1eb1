package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** People, tokens and changes come back as they were kept, also from a file of the first schema. */
class SignInStoreTest {
  @RegisterExtension final OwnDatabase own = new OwnDatabase();

  private static final StoredPerson WREN = new StoredPerson("Wren", "owner", "$2a$04$hash");

  @Test
  void people_areAddedChangedAndForgottenWithTheirTokens() {
    SignInStore store = new SignInStore(own.database());
    StoredPerson rook = new StoredPerson("Rook", "helper", "$2a$04$other");
    store.keep(WREN);
    store.keep(rook);
    store.keep(token("a", "Rook"));
    store.keep(token("b", "Wren"));
    store.keep(new StoredPerson("Rook", "panelist", "$2a$04$new"));
    assertThat(store.people())
        .containsExactly(new StoredPerson("Rook", "panelist", "$2a$04$new"), WREN);
    assertThat(store.tokens()).hasSize(2);

    store.forget("Rook");
    assertThat(store.people()).containsExactly(WREN);
    assertThat(store.tokens()).containsExactly(token("b", "Wren"));
    store.forgetToken("b");
    store.forgetToken("b");
    assertThat(store.tokens()).isEmpty();
  }

  @Test
  void aTokenOfNobodyIsNotKept() {
    SignInStore store = new SignInStore(own.database());
    assertThatThrownBy(() -> store.keep(token("a", "Nobody"))).isInstanceOf(StoreException.class);
  }

  @Test
  void changes_comeNewestFirstAPageAtATime() {
    SignInStore store = new SignInStore(own.database());
    for (int i = 1; i <= 5; i++) {
      store.note(new StoredChange(0, 1_000L * i, "Wren", "change " + i + " '; DROP TABLE audit"));
    }
    assertThat(store.changes(Long.MAX_VALUE, 2))
        .extracting(StoredChange::id)
        .containsExactly(5L, 4L);
    assertThat(store.changes(4, 2))
        .extracting(StoredChange::atMillis)
        .containsExactly(3_000L, 2_000L);
    assertThat(store.changes(1, 2)).isEmpty();
  }

  @Test
  void aFileOfTheFirstSchemaIsBroughtUpToDateWithWhatItHolds() throws Exception {
    String first =
        new String(
            Schema.class.getResourceAsStream("schema-001.sql").readAllBytes(),
            StandardCharsets.UTF_8);
    try (Connection old = DriverManager.getConnection("jdbc:sqlite:" + own.file());
        Statement sql = old.createStatement()) {
      sql.executeUpdate(first);
      sql.execute("INSERT INTO room (name) VALUES ('curing')");
      sql.execute("PRAGMA user_version = 1");
    }
    Database database = own.database();
    new SignInStore(database).keep(WREN);
    assertThat(new SignInStore(database).people()).containsExactly(WREN);
    assertThat(database.<Boolean>read(SignInStoreTest::hasCuringRoom)).isTrue();
  }

  private static boolean hasCuringRoom(Connection connection) throws SQLException {
    try (Statement sql = connection.createStatement()) {
      return sql.executeQuery("SELECT 1 FROM room WHERE name = 'curing'").next();
    }
  }

  private static StoredToken token(String hash, String person) {
    return new StoredToken(hash, "id-" + hash, person, "helper", true, "iPhone", 5_000, 9_000);
  }
}
