package rindward.dashboard.signin;

/**
 * Somebody who may sign in.
 *
 * @param name unique, also when capitals are ignored
 * @param passwordHash bcrypt, with its salt and cost; never the password
 */
public record Person(String name, Role role, String passwordHash) {

  /** Keeps the hash out of logs. */
  @Override
  public String toString() {
    return name + " (" + role.word() + ")";
  }
}
