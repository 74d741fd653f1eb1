package rindward.controller.command.base;

import java.io.PrintWriter;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rindward.controller.journal.Entry;
import rindward.controller.judge.JudgedLots;
import rindward.controller.lot.Lot;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.EntryService.Refused;
import rindward.controller.store.Journal;

/**
 * A command that says something of lots, beside a running daemon if there is one: what it says is
 * kept whole or not at all, and then each lot is shown as it stands.
 */
public abstract class SayingCommand extends ShedCommand {
  @Option(
      names = "--at",
      paramLabel = "TIME",
      description = "When it happened, such as 2026-10-03T14:30 at the farm; now if not given.")
  private @Nullable String at;

  @Option(names = "--by", paramLabel = "NAME", description = "Who says so; the user if not given.")
  private String by = System.getProperty("user.name", "somebody");

  /**
   * Returns what is said; nothing if there is nothing to say.
   *
   * @param farm as it stands before
   * @param at when it happened
   * @throws ParameterException when it cannot be said like that; see {@link #wrong}
   */
  protected abstract List<? extends Entry> entries(Farm farm, Instant at);

  /**
   * Returns what is told besides, though it is taken; one sentence each.
   *
   * @param before as the farm stood before
   * @param after as it stands with what was said
   * @param judged what has become of the lots by then
   */
  protected List<String> warnings(
      Farm before, Farm after, JudgedLots judged, List<? extends Entry> said) {
    return List.of();
  }

  /** Prints what became of it. */
  protected void tell(PrintWriter out, Farm after, List<? extends Entry> said) {
    said.stream()
        .map(Entry::subject)
        .distinct()
        .forEach(
            code ->
                out.println(
                    after
                        .lot(code)
                        .map(lot -> LotLine.of(lot, after.crop(lot)))
                        .orElse("Lot " + code)));
  }

  @Override
  protected final int on(Settings settings) {
    Instant now = Instant.now();
    Instant happened = at(settings.zone(), now);
    try (Database database = new Database(settings.store())) {
      EntryService door = new EntryService(new Journal(database), settings.crops());
      return say(door, database, settings, happened, now);
    }
  }

  private int say(
      EntryService door, Database database, Settings settings, Instant happened, Instant now) {
    Farm before = Farm.of(settings, door.journal(), now);
    List<? extends Entry> entries = entries(before, happened);
    List<Refused> refusals = door.sayAll(entries, by, UUID.randomUUID().toString(), now);
    if (!refusals.isEmpty()) {
      refusals.forEach(refused -> complain(refused.sentence(), ExitCode.WRONG_USAGE));
      return ExitCode.WRONG_USAGE;
    }
    PrintWriter out = out();
    Farm after = Farm.of(settings, door.journal(), now);
    tell(out, after, entries);
    warnings(before, after, after.judged(database), entries).forEach(out::println);
    return ExitCode.FINE;
  }

  /** Returns the lot with that code. */
  protected final Lot lot(Farm farm, String code) {
    return farm.lot(code)
        .orElseThrow(
            () -> wrong("lot was '" + Farm.code(code) + "' but there is no lot of that code"));
  }

  private Instant at(ZoneId zone, Instant now) {
    if (at == null) {
      return now;
    }
    try {
      if (at.endsWith("Z")) {
        return Instant.parse(at);
      }
      return at.indexOf('T') > 0
          ? LocalDateTime.parse(at).atZone(zone).toInstant()
          : LocalDate.parse(at).atStartOfDay(zone).toInstant();
    } catch (DateTimeException e) {
      throw wrong("--at was '" + at + "' but it must be a time such as 2026-10-03T14:30");
    }
  }
}
