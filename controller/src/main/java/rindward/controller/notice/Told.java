package rindward.controller.notice;

import java.time.Instant;

/** Somebody was told something. */
public record Told(Instant at, Errand errand) {}
