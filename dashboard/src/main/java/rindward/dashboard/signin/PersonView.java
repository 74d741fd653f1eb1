package rindward.dashboard.signin;

/** Somebody who may sign in, as the owner sees them. */
public record PersonView(String name, Role role) {

  static PersonView of(Person person) {
    return new PersonView(person.name(), person.role());
  }
}
