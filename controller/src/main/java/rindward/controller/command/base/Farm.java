package rindward.controller.command.base;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rindward.controller.crop.Crop;
import rindward.controller.journal.Planted;
import rindward.controller.journal.Recorded;
import rindward.controller.judge.JournalView;
import rindward.controller.judge.JudgedLots;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Session;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;

/**
 * What a command about lots knows: the settings, and the lots as they stand.
 *
 * @param told everything said so far
 * @param now the one now of the command
 */
public record Farm(Settings settings, JournalView told, Instant now) {

  public static Farm of(Settings settings, List<Recorded> journal, Instant now) {
    return new Farm(settings, JournalView.of(journal), now);
  }

  /** Returns everything said so far. */
  public List<Recorded> journal() {
    return told.journal();
  }

  public Lots lots() {
    return told.lots();
  }

  /** Returns every lot and variety as they stand; the database must stay open while it is asked. */
  public JudgedLots judged(Database database) {
    return JudgedLots.of(
        settings.crops(),
        settings.hold().toMillis(),
        new SampleStore(database, new SampleLog(database))::history,
        told,
        now);
  }

  /** Returns the farm as it stood at an earlier moment: by what had happened until then. */
  public Farm asOf(Instant then) {
    return of(
        settings, journal().stream().filter(r -> !r.entry().at().isAfter(then)).toList(), then);
  }

  /** Returns the lot with that code, in whatever letters it was typed. */
  public Optional<Lot> lot(String code) {
    return lots().find(code(code));
  }

  /** Returns the plan of that code, harvested or not. */
  public Optional<Planted> plan(String code) {
    return Optional.ofNullable(lots().plans().get(code(code)));
  }

  /** Returns the type of a lot; empty if it has left the guide. */
  public Optional<Crop> crop(Lot lot) {
    return settings.crops().crop(lot.crop());
  }

  /** Returns the key of a type for any name the guide has for it; an unknown name as it is. */
  public String cropKey(String name) {
    return settings.crops().crop(name.toLowerCase(Locale.ROOT)).map(Crop::key).orElse(name);
  }

  /** Returns the tasting session of that name, as it stands. */
  public Optional<Session> session(String name) {
    return told.sessions().stream().filter(s -> s.name().equals(name)).findFirst();
  }

  /** Returns the refusal of a session that was never planned. */
  public static String noSession(String name) {
    return "NAME was '" + name + "' but no session of that name is planned";
  }

  /** Returns what stands about a lot, in the order in which it was said. */
  public List<Recorded> about(String code) {
    return Lots.standing(
        journal().stream().filter(r -> r.entry().subject().equals(code(code))).toList());
  }

  /** Returns a code as it is painted. */
  public static String code(String typed) {
    return typed.toUpperCase(Locale.ROOT);
  }
}
