package rindward.dashboard.signin;

import rindward.dashboard.request.JsonBody;

/** Changes the caller's own password. */
record PasswordRequest(String old, String wanted) {
  PasswordRequest {
    JsonBody.needed(old, "old", 200);
    JsonBody.needed(wanted, "wanted", 200);
  }

  @Override
  public String toString() {
    return "PasswordRequest";
  }
}
