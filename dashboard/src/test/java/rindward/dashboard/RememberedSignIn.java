package rindward.dashboard;

import java.util.ArrayList;
import java.util.List;
import rindward.dashboard.signin.AuditEntry;
import rindward.dashboard.signin.Person;
import rindward.dashboard.signin.SignInDesk;
import rindward.dashboard.signin.Token;

/** Keeps people, tokens and the record of changes in memory, for tests and for the preview. */
final class RememberedSignIn implements SignInDesk {
  private final List<Person> people = new ArrayList<>();
  private final List<Token> tokens = new ArrayList<>();
  private final List<AuditEntry> audit = new ArrayList<>();

  @Override
  public synchronized List<Person> people() {
    return List.copyOf(people);
  }

  @Override
  public synchronized void keep(Person person) {
    people.removeIf(p -> p.name().equals(person.name()));
    people.add(person);
  }

  @Override
  public synchronized void forget(String name) {
    people.removeIf(p -> p.name().equals(name));
    tokens.removeIf(t -> t.person().equals(name));
  }

  @Override
  public synchronized List<Token> tokens() {
    return List.copyOf(tokens);
  }

  @Override
  public synchronized void keep(Token token) {
    tokens.add(token);
  }

  @Override
  public synchronized void forgetToken(String hash) {
    tokens.removeIf(t -> t.hash().equals(hash));
  }

  @Override
  public synchronized void note(AuditEntry entry) {
    audit.add(0, new AuditEntry(audit.size() + 1, entry.at(), entry.who(), entry.what()));
  }

  @Override
  public synchronized List<AuditEntry> audit(long beforeId, int size) {
    return audit.stream().filter(entry -> entry.id() < beforeId).limit(size).toList();
  }
}
