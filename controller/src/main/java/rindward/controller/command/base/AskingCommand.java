package rindward.controller.command.base;

import java.time.Instant;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Session;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;

/** A command that asks about lots and changes nothing, beside a running daemon if there is one. */
public abstract class AskingCommand extends ShedCommand {
  /** Answers, and returns the exit code. The database stays open until then. */
  protected abstract int answer(Farm farm, Database database);

  @Override
  protected final int on(Settings settings) {
    try (Database database = new Database(settings.store())) {
      EntryService door = new EntryService(new Journal(database), settings.crops());
      return answer(Farm.of(settings, door.journal(), Instant.now()), database);
    }
  }

  /** Returns the lot with that code. */
  protected final Lot lot(Farm farm, String code) {
    return farm.lot(code)
        .orElseThrow(
            () -> wrong("CODE was '" + Farm.code(code) + "' but there is no lot of that code"));
  }

  /** Returns the tasting session of that name. */
  protected final Session session(Farm farm, String name) {
    return farm.session(name).orElseThrow(() -> wrong(Farm.noSession(name)));
  }
}
