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
import rindward.controller.lot.Entry.Harvested;
import rindward.controller.settings.Settings;

/** {@code lot add}: a lot came in. */
@Command(
    name = "add",
    description = "Bring in a lot.",
    footer = {
      "",
      "Example:",
      "  rindward lot add --settings shed.toml KB1 --crop kabocha --place curing --count 40"
    })
final class LotAddCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private SettingsOption settingsOption = new SettingsOption();
  @Mixin private Saying saying = new Saying();

  @Parameters(paramLabel = "CODE", description = "Code of the lot, as painted on the crate.")
  private String code = "";

  @Option(names = "--crop", required = true, description = "Type in the crop guide.")
  private String crop = "";

  @Option(names = "--variety", description = "Name of the variety.")
  private String variety = "";

  @Option(names = "--place", required = true, description = "Room or other place.")
  private String place = "";

  @Option(names = "--count", required = true, description = "How many fruits, bulbs or roots.")
  private int count;

  @Override
  public Integer call() {
    Optional<Settings> settings = settingsOption.read(spec);
    if (settings.isEmpty()) {
      return Main.WRONG_USAGE;
    }
    Instant now = Instant.now();
    Harvested entry =
        new Harvested(
            code.toUpperCase(Locale.ROOT),
            crop,
            variety,
            count,
            place,
            saying.at(spec, settings.get().zone(), now));
    return saying.say(
        spec,
        settings.get(),
        entry,
        now,
        "Lot " + entry.lot() + " (" + crop + ", " + count + ") is in " + place + ".");
  }
}
