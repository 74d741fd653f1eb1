package rindward.controller.command;

import java.time.Instant;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.lot.Entry;
import rindward.controller.lot.Entry.Moved;

/** {@code lot move}: lots went to another place. */
@Command(
    name = "move",
    description = "Move one or several lots to another room or place.",
    footer = {
      "",
      "Examples:",
      "  rindward lot move --settings shed.toml K4T --place storage --at 2026-10-03T14:30",
      "  rindward lot move --settings shed.toml K4T A3A C7C --place cellar"
    })
final class LotMoveCommand extends SayingCommand {
  @Parameters(arity = "1..*", paramLabel = "CODE", description = "Codes of the lots.")
  private List<String> codes = List.of();

  @Option(names = "--place", required = true, description = "Room or other place.")
  private String place = "";

  @Override
  List<Entry> entries(Farm farm, Instant at) {
    return codes.stream()
        .map(Farm::code)
        .distinct()
        .<Entry>map(code -> new Moved(code, place, at))
        .toList();
  }

  @Override
  List<String> warnings(Farm before, List<? extends Entry> said) {
    boolean isRoom = before.settings().rooms().stream().anyMatch(room -> room.name().equals(place));
    return isRoom
        ? List.of()
        : List.of("There is no probe in " + place + ": the time there will be unknown.");
  }
}
