/**
 * Who may do what: passwords, sessions, API tokens, roles, and the record of who changed what.
 * Every request passes the {@link rindward.dashboard.signin.Gate}, which lets through what its
 * route's {@link rindward.dashboard.signin.Access} allows and nothing else.
 */
@NullMarked
package rindward.dashboard.signin;

import org.jspecify.annotations.NullMarked;
