package rindward.controller.desk;

import java.time.Instant;
import java.util.List;
import rindward.controller.store.SignInStore;
import rindward.controller.store.StoredChange;
import rindward.controller.store.StoredPerson;
import rindward.controller.store.StoredToken;
import rindward.dashboard.signin.AuditEntry;
import rindward.dashboard.signin.Person;
import rindward.dashboard.signin.Role;
import rindward.dashboard.signin.SignInDesk;
import rindward.dashboard.signin.Token;

/** Keeps for the dashboard who may sign in and who changed what, in the database. */
public final class KeptSignIn implements SignInDesk {
  private final SignInStore store;

  public KeptSignIn(SignInStore store) {
    this.store = store;
  }

  @Override
  public List<Person> people() {
    return store.people().stream()
        .map(row -> new Person(row.name(), Role.of(row.role()), row.passwordHash()))
        .toList();
  }

  @Override
  public void keep(Person person) {
    store.keep(new StoredPerson(person.name(), person.role().word(), person.passwordHash()));
  }

  @Override
  public void forget(String name) {
    store.forget(name);
  }

  @Override
  public List<Token> tokens() {
    return store.tokens().stream()
        .map(
            row ->
                new Token(
                    row.hash(),
                    row.id(),
                    row.person(),
                    Role.of(row.role()),
                    row.isSession(),
                    row.label(),
                    Instant.ofEpochMilli(row.createdMillis()),
                    Instant.ofEpochMilli(row.expiresMillis())))
        .toList();
  }

  @Override
  public void keep(Token token) {
    store.keep(
        new StoredToken(
            token.hash(),
            token.id(),
            token.person(),
            token.role().word(),
            token.isSession(),
            token.label(),
            token.createdAt().toEpochMilli(),
            token.expiresAt().toEpochMilli()));
  }

  @Override
  public void forgetToken(String hash) {
    store.forgetToken(hash);
  }

  @Override
  public void note(AuditEntry entry) {
    store.note(new StoredChange(0, entry.at().toEpochMilli(), entry.who(), entry.what()));
  }

  @Override
  public List<AuditEntry> audit(long beforeId, int size) {
    return store.changes(beforeId, size).stream()
        .map(
            row ->
                new AuditEntry(
                    row.id(), Instant.ofEpochMilli(row.atMillis()), row.who(), row.what()))
        .toList();
  }
}
