package rindward.dashboard.signin;

import rindward.dashboard.request.JsonBody;

/** Makes the first owner: the code that the program showed, a name and a password. */
record SetUpRequest(String code, String name, String password) {
  SetUpRequest {
    JsonBody.needed(code, "code", 40);
    JsonBody.needed(name, "name", 100);
    JsonBody.needed(password, "password", 200);
  }

  @Override
  public String toString() {
    return "SetUpRequest of " + name;
  }
}
