package rindward.dashboard.signin;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.ConflictResponse;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Who may sign in. There is always one owner left. For any thread. */
final class People {
  private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} .'_-]{0,39}");
  private static final int MOST = 100;

  private final SignInDesk desk;
  private final Passwords passwords;
  private final Tokens tokens;

  People(SignInDesk desk, Passwords passwords, Tokens tokens) {
    this.desk = desk;
    this.passwords = passwords;
    this.tokens = tokens;
  }

  List<Person> all() {
    return desk.people();
  }

  /** Returns the person of that name, however its letters are written. */
  Optional<Person> find(String name) {
    return desk.people().stream().filter(p -> p.name().equalsIgnoreCase(name.strip())).findFirst();
  }

  boolean hasOwner() {
    return desk.people().stream().anyMatch(p -> p.role() == Role.OWNER);
  }

  /** Adds the first owner. */
  synchronized Person addOwner(String name, String password) {
    if (hasOwner()) {
      throw new ConflictResponse("There is an owner already; sign in instead.");
    }
    return keep(name, Role.OWNER, password);
  }

  /**
   * Adds a person, or changes the one of that name. Whoever's role or password is changed has to
   * sign in again.
   *
   * @param password null to leave it as it is
   */
  synchronized Person change(String name, Role role, @Nullable String password) {
    Optional<Person> known = find(name);
    if (known.isEmpty()) {
      if (password == null) {
        throw new BadRequestResponse("password was missing but a new person must have one.");
      }
      if (desk.people().size() >= MOST) {
        throw new ConflictResponse("There are " + MOST + " people already, which is the limit.");
      }
      return keep(name, role, password);
    }
    Person person = known.get();
    if (person.role() == Role.OWNER && role != Role.OWNER) {
      refuseWithoutOtherOwner(person);
    }
    Person changed =
        password == null
            ? new Person(person.name(), role, person.passwordHash())
            : new Person(person.name(), role, hashOf(password));
    desk.keep(changed);
    tokens.endAllOf(person.name(), "");
    return changed;
  }

  /** Sets a person's own password; their other sessions and tokens end. */
  synchronized void setPassword(Person person, String password, String exceptTokenId) {
    desk.keep(new Person(person.name(), person.role(), hashOf(password)));
    tokens.endAllOf(person.name(), exceptTokenId);
  }

  synchronized void remove(String name) {
    Person person =
        find(name).orElseThrow(() -> new NotFoundResponse("Nobody of that name is known here."));
    if (person.role() == Role.OWNER) {
      refuseWithoutOtherOwner(person);
    }
    tokens.endAllOf(person.name(), "");
    desk.forget(person.name());
  }

  private Person keep(String name, Role role, String password) {
    if (!NAME.matcher(name.strip()).matches()) {
      throw new BadRequestResponse(
          "name was not a name: it must be 1 to 40 letters, figures, spaces, dots, dashes or"
              + " apostrophes, and begin with a letter or figure.");
    }
    Person person = new Person(name.strip(), role, hashOf(password));
    desk.keep(person);
    return person;
  }

  private String hashOf(String password) {
    String refusal = Passwords.refusal(password);
    if (!refusal.isEmpty()) {
      throw new BadRequestResponse(refusal);
    }
    return passwords.hash(password);
  }

  private void refuseWithoutOtherOwner(Person owner) {
    boolean isOnly =
        desk.people().stream()
            .noneMatch(p -> p.role() == Role.OWNER && !p.name().equals(owner.name()));
    if (isOnly) {
      throw new ConflictResponse(owner.name() + " is the only owner; make another one first.");
    }
  }
}
