package rindward.dashboard.signin;

import com.fasterxml.jackson.annotation.JsonValue;

/** What a person is to the farm. Each role may do everything that the roles after it may. */
public enum Role {
  /** Runs the farm: also people, tokens and the record of changes. */
  OWNER("owner"),
  /** Works in the shed: lots, alarms, switching by hand. */
  HELPER("helper"),
  /** Tastes and scores, and sees nothing that would tell what is tasted. */
  PANELIST("panelist");

  private final String word;

  Role(String word) {
    this.word = word;
  }

  /** Returns the word used on the wire and on disk. */
  @JsonValue
  public String word() {
    return word;
  }

  /** Tells whether this role may do what {@code needed} may. */
  public boolean covers(Role needed) {
    return compareTo(needed) <= 0;
  }

  /**
   * Returns the role of that word.
   *
   * @throws IllegalArgumentException when there is none
   */
  public static Role of(String word) {
    for (Role role : values()) {
      if (role.word.equals(word)) {
        return role;
      }
    }
    throw new IllegalArgumentException(
        "role was '" + word + "' but it must be owner, helper or panelist");
  }
}
