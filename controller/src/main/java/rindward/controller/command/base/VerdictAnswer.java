package rindward.controller.command.base;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.readiness.Verdict;

/** A verdict on a lot as {@code --json} shows it. */
public record VerdictAnswer(
    String state,
    @Nullable String phase,
    @Nullable String expected,
    @Nullable Instant from,
    @Nullable Instant to,
    List<String> reasons,
    String wouldChange,
    List<String> figures,
    String sureness) {
  public static VerdictAnswer of(Verdict verdict) {
    return new VerdictAnswer(
        verdict.state().toString(),
        verdict.phase().orElse(null),
        verdict.expected().map(Verdict.Expected::what).orElse(null),
        verdict.expected().map(Verdict.Expected::from).orElse(null),
        verdict.expected().map(Verdict.Expected::to).orElse(null),
        verdict.reasons(),
        verdict.wouldChange(),
        verdict.yardstick().sentences(),
        verdict.sureness().toString());
  }

  /** Returns the verdict in a few words. */
  public String words() {
    return state + (phase == null ? "" : ": " + phase);
  }

  /** Returns the verdict in full, a line each: why, what comes, what would change it, how sure. */
  public List<String> lines(ZoneId zone) {
    List<String> lines = new ArrayList<>(reasons);
    if (from != null && to != null) {
      lines.add(day(from, zone) + " to " + day(to, zone) + ": " + expected + ".");
    }
    lines.add(wouldChange);
    lines.addAll(figures);
    lines.add("How sure: " + sureness + ".");
    return lines;
  }

  private static String day(Instant at, ZoneId zone) {
    return at.atZone(zone).toLocalDate().toString();
  }
}
