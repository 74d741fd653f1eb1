package rindward.dashboard.signin;

import org.jspecify.annotations.Nullable;

/**
 * Who the reader is, and what the page needs to know to offer what they may do.
 *
 * @param name null for somebody who has not signed in
 * @param role likewise
 * @param csrfToken goes with every change as {@code X-CSRF-Token}; null without a session
 * @param needsOwner whether the farm still waits for its first owner
 * @param openReading whether everybody on the network may read
 */
public record MeView(
    @Nullable String name,
    @Nullable Role role,
    @Nullable String csrfToken,
    boolean needsOwner,
    boolean openReading) {}
