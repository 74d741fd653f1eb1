package rindward.controller.command;

import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Session;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.Door;
import rindward.controller.store.Journal;
import rindward.controller.store.StoreException;

/** A command that asks about lots and changes nothing, beside a running daemon if there is one. */
abstract class AskingCommand implements Callable<Integer> {
  @Spec CommandSpec spec;
  @Mixin private SettingsOption settingsOption = new SettingsOption();

  /** Answers, and returns the exit code. The database stays open until then. */
  abstract int answer(Farm farm, Database database);

  @Override
  public final Integer call() {
    Optional<Settings> settings = settingsOption.read(spec);
    if (settings.isEmpty()) {
      return Main.WRONG_USAGE;
    }
    try (Database database = new Database(settings.get().store())) {
      Door door = new Door(new Journal(database), settings.get().crops().keys());
      return answer(Farm.of(settings.get(), door.journal(), Instant.now()), database);
    } catch (StoreException e) {
      spec.commandLine().getErr().println(e.getMessage());
      spec.commandLine().getErr().flush();
      return Main.NOT_WELL;
    }
  }

  /** Returns the lot with that code. */
  final Lot lot(Farm farm, String code) {
    return farm.lot(code)
        .orElseThrow(
            () -> wrong("CODE was '" + Farm.code(code) + "' but there is no lot of that code"));
  }

  /** Returns the tasting session of that name. */
  final Session session(Farm farm, String name) {
    return farm.sessions().find(name).orElseThrow(() -> wrong(Farm.noSession(name)));
  }

  /** Returns a refusal to be thrown. */
  final ParameterException wrong(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }
}
