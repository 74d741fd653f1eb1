package rindward.dashboard.signin;

import rindward.dashboard.request.JsonBody;

/**
 * Makes an API token.
 *
 * @param label what it is for
 * @param role the word of what it may do
 */
record TokenRequest(String label, String role) {
  TokenRequest {
    Role.of(JsonBody.needed(role, "role", 20));
    if (JsonBody.needed(label, "label", 60).isBlank()) {
      throw new IllegalArgumentException("label was '' but it must say what the token is for.");
    }
  }
}
