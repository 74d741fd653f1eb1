package rindward.controller.command;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rindward.controller.lot.Entry.Moved;
import rindward.controller.settings.Settings;

/** {@code lot move}: a lot went to another place. */
@Command(
    name = "move",
    description = "Move a lot to another room or place.",
    footer = {
      "",
      "Example:",
      "  rindward lot move --settings shed.toml KB1 --place storage --at 2026-10-03T14:30"
    })
final class LotMoveCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private SettingsOption settingsOption = new SettingsOption();
  @Mixin private Saying saying = new Saying();

  @Parameters(paramLabel = "CODE", description = "Code of the lot.")
  private String code = "";

  @Option(names = "--place", required = true, description = "Room or other place.")
  private String place = "";

  @Override
  public Integer call() {
    Optional<Settings> settings = settingsOption.read(spec);
    if (settings.isEmpty()) {
      return Main.WRONG_USAGE;
    }
    Instant now = Instant.now();
    Moved entry =
        new Moved(
            code.toUpperCase(Locale.ROOT), place, saying.at(spec, settings.get().zone(), now));
    return saying.say(
        spec, settings.get(), entry, now, "Lot " + entry.lot() + " is in " + place + ".");
  }
}
