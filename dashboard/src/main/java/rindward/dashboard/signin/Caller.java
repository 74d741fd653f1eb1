package rindward.dashboard.signin;

import org.jspecify.annotations.Nullable;

/**
 * Who makes a request.
 *
 * @param name as the person is known here; empty for somebody who has not signed in
 * @param role null for somebody who has not signed in
 * @param tokenId the session or token that vouches; empty likewise
 */
public record Caller(String name, @Nullable Role role, String tokenId) {

  /** Somebody who has not signed in. */
  static final Caller NOBODY = new Caller("", null, "");

  public boolean is(Role needed) {
    return role != null && role.covers(needed);
  }
}
