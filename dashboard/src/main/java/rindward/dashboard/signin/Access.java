package rindward.dashboard.signin;

import io.javalin.security.RouteRole;

/**
 * Who a route is for. A route that says nothing is for the owner only, so that one which was
 * forgotten is closed.
 */
public enum Access implements RouteRole {
  /** Everybody, signed in or not. */
  ANYONE,
  /** Everybody while reading is open; otherwise whoever works here. */
  READER,
  PANELIST,
  HELPER,
  OWNER;

  /** Tells whether {@code caller} may pass. */
  boolean admits(Caller caller, boolean openReading) {
    return switch (this) {
      case ANYONE -> true;
      case READER -> openReading || caller.is(Role.HELPER);
      case PANELIST -> caller.is(Role.PANELIST);
      case HELPER -> caller.is(Role.HELPER);
      case OWNER -> caller.is(Role.OWNER);
    };
  }
}
