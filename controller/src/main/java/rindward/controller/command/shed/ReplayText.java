package rindward.controller.command.shed;

import java.io.PrintWriter;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import rindward.controller.crop.RateCurve;
import rindward.controller.exchange.Recording;
import rindward.controller.ledger.Account;
import rindward.controller.ledger.BoundedTotal;

/** How {@code replay} answers a person: one line a fact, times as hours, minutes and seconds. */
final class ReplayText {
  private static final DateTimeFormatter SECOND =
      DateTimeFormatter.ofPattern("d MMM uuuu HH:mm:ss z", Locale.ENGLISH);

  private final PrintWriter out;
  private final ZoneId zone;

  ReplayText(PrintWriter out, ZoneId zone) {
    this.out = out;
    this.zone = zone;
  }

  void print(
      Recording recording, String question, Account account, Optional<BoundedTotal> cureProgress) {
    out.println(question);
    out.println();
    line("rows", recording.rows() + " used, " + recording.rejectedRows() + " left out");
    if (recording.headerLine() > 0) {
      line("header", "line " + recording.headerLine() + " was taken as a header");
    }
    line("first", at(recording.firstMillis()));
    line("last", at(recording.lastMillis()));
    line("elapsed", time(account.elapsedMillis()));
    line("unknown", time(account.unknownMillis()) + share(account.unknownMillis(), account));
    out.println();
    out.printf("  %-10s %22s %22s %22s%n", "h:mm:ss", "measured", "certain", "possible");
    row("in range", account.inRange(), account);
    row("too cold", account.tooCold(), account);
    row("too warm", account.tooWarm(), account);
    row("too dry", account.tooDry(), account);
    row("too damp", account.tooDamp(), account);
    cureProgress.ifPresent(
        progress ->
            out.printf(
                "%n  %-10s %22s %22s %22s%n",
                "cured",
                cured(progress.measured()),
                cured(progress.certain()),
                cured(progress.possible())));
    out.flush();
  }

  private void line(String what, String value) {
    out.printf("  %-10s %s%n", what, value);
  }

  private void row(String what, BoundedTotal tally, Account account) {
    out.printf(
        "  %-10s %22s %22s %22s%n",
        what,
        time(tally.measured()) + share(tally.measured(), account),
        time(tally.certain()) + share(tally.certain(), account),
        time(tally.possible()) + share(tally.possible(), account));
  }

  private String at(long millis) {
    return SECOND.format(Instant.ofEpochMilli(millis).atZone(zone));
  }

  private static String time(long millis) {
    long seconds = Math.round(millis / 1000.0);
    return String.format(
        Locale.ROOT, "%d:%02d:%02d", seconds / 3600, seconds / 60 % 60, seconds % 60);
  }

  private static String cured(long femto) {
    return String.format(Locale.ROOT, "%.1f %%", 100.0 * femto / RateCurve.WHOLE);
  }

  private static String share(long millis, Account account) {
    return account.elapsedMillis() == 0
        ? ""
        : String.format(Locale.ROOT, " %5.1f %%", 100.0 * millis / account.elapsedMillis());
  }
}
