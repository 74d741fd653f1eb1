package rindward.controller.command.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Entry;
import rindward.controller.journal.MisfitAccepted;
import rindward.controller.journal.Moved;
import rindward.controller.judge.JudgedLots;
import rindward.controller.judge.Misfits;
import rindward.controller.room.Room;

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

  @Option(
      names = "--accept",
      description = "They are meant to be there, though it does not suit them; say so no more.")
  private boolean accept;

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    List<Entry> entries = new ArrayList<>();
    for (String code : new LinkedHashSet<>(codes.stream().map(Farm::code).toList())) {
      entries.add(new Moved(code, place, at));
      if (accept) {
        entries.add(new MisfitAccepted(code, place, at));
      }
    }
    return entries;
  }

  @Override
  protected List<String> warnings(
      Farm before, Farm after, JudgedLots judged, List<? extends Entry> said) {
    return new Misfits(after.settings().rooms().stream().map(Room::surroundings).toList())
        .told(judged, codes.stream().map(code -> lot(after, code)).toList(), place);
  }
}
