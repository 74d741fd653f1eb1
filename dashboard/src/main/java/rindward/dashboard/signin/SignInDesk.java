package rindward.dashboard.signin;

import java.util.List;

/**
 * What sign-in asks of the controller: to keep people, tokens and the record of changes. Called
 * from any web thread. What is kept is on the disk when a method returns; a method that cannot keep
 * it throws an unchecked exception.
 */
public interface SignInDesk {

  /** Returns everybody who may sign in. */
  List<Person> people();

  /** Adds a person, or changes the one of that name. */
  void keep(Person person);

  /** Forgets a person and every token of theirs. */
  void forget(String name);

  /** Returns every session and API token, expired ones too. */
  List<Token> tokens();

  void keep(Token token);

  /** Forgets a token; one that is not there does no harm. */
  void forgetToken(String hash);

  /** Adds to the record of changes, which only grows. */
  void note(AuditEntry entry);

  /**
   * Returns a page of the record, newest first.
   *
   * @param beforeId only entries before this one; {@link Long#MAX_VALUE} for the first page
   */
  List<AuditEntry> audit(long beforeId, int size);
}
