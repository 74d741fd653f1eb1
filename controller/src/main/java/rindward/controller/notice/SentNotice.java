package rindward.controller.notice;

import java.time.Instant;

/** Somebody was told something. */
public record SentNotice(Instant at, NotificationTask errand) {}
