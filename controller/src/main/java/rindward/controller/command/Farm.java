package rindward.controller.command;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rindward.controller.crop.Crop;
import rindward.controller.journal.Planted;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Sessions;
import rindward.controller.settings.Settings;

/**
 * What a command about lots knows: the settings, and the lots as they stand.
 *
 * @param journal everything said so far
 * @param now the one now of the command
 */
record Farm(Settings settings, List<Recorded> journal, Lots lots, Instant now) {

  static Farm of(Settings settings, List<Recorded> journal, Instant now) {
    return new Farm(settings, journal, Lots.of(journal), now);
  }

  /** Returns the farm as it stood at an earlier moment: by what had happened until then. */
  Farm asOf(Instant then) {
    return of(settings, journal.stream().filter(r -> !r.entry().at().isAfter(then)).toList(), then);
  }

  /** Returns the lot with that code, in whatever letters it was typed. */
  Optional<Lot> lot(String code) {
    return lots.find(code(code));
  }

  /** Returns the plan of that code, harvested or not. */
  Optional<Planted> plan(String code) {
    return Optional.ofNullable(lots.plans().get(code(code)));
  }

  Optional<Crop> crop(Lot lot) {
    return settings.crops().crop(lot.crop());
  }

  /** Returns the key of a type for any name the guide has for it; an unknown name as it is. */
  String cropKey(String name) {
    return settings.crops().crop(name.toLowerCase(Locale.ROOT)).map(Crop::key).orElse(name);
  }

  /** Returns the tasting sessions as they stand. */
  Sessions sessions() {
    return Sessions.of(journal);
  }

  /** Returns the refusal of a session that was never planned. */
  static String noSession(String name) {
    return "NAME was '" + name + "' but no session of that name is planned";
  }

  /** Returns what stands about a lot, in the order in which it was said. */
  List<Recorded> about(String code) {
    return Lots.standing(
        journal.stream().filter(r -> r.entry().subject().equals(code(code))).toList());
  }

  /** Returns a code as it is painted. */
  static String code(String typed) {
    return typed.toUpperCase(Locale.ROOT);
  }
}
