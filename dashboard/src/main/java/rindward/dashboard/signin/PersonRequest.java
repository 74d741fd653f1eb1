package rindward.dashboard.signin;

import org.jspecify.annotations.Nullable;
import rindward.dashboard.request.JsonBody;

/**
 * Adds a person or changes one.
 *
 * @param role the role's word
 * @param password null to leave it as it is
 */
record PersonRequest(String role, @Nullable String password) {
  PersonRequest {
    Role.of(JsonBody.needed(role, "role", 20));
    if (password != null) {
      JsonBody.needed(password, "password", 200);
    }
  }

  @Override
  public String toString() {
    return "PersonRequest of " + role;
  }
}
