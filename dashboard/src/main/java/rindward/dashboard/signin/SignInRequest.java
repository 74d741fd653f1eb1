package rindward.dashboard.signin;

import rindward.dashboard.request.JsonBody;

/** Opens a session. */
record SignInRequest(String name, String password) {
  SignInRequest {
    JsonBody.needed(name, "name", 100);
    JsonBody.needed(password, "password", 200);
  }

  @Override
  public String toString() {
    return "SignInRequest of " + name;
  }
}
