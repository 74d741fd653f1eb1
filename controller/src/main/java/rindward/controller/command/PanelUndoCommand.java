package rindward.controller.command;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rindward.controller.lot.Entry;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Recorded;
import rindward.controller.lot.Tasting;
import rindward.controller.lot.Tasting.TakenBack;

/** {@code panel undo}: what was said last of a session should not have been said. */
@Command(
    name = "undo",
    description =
        "Take back what was last said of a session that is not closed: a fruit that was cooked,"
            + " a cup that was scored, or, if nothing else was said, its plan. The journal keeps"
            + " both.",
    footer = {"", "Example:", "  rindward panel undo --settings shed.toml winter"})
final class PanelUndoCommand extends SayingCommand {
  @Parameters(paramLabel = "NAME", description = "Name of the session.")
  private String name = "";

  @Override
  List<Entry> entries(Farm farm, Instant at) {
    List<Recorded> about =
        Lots.standing(farm.journal()).stream()
            .filter(r -> r.entry() instanceof Tasting tasting && tasting.session().equals(name))
            .toList();
    if (about.isEmpty()) {
      throw wrong(Farm.noSession(name));
    }
    Recorded last = about.get(about.size() - 1);
    List<Entry> back = new ArrayList<>();
    about.stream()
        .filter(r -> r.recordedAt().equals(last.recordedAt()) && r.by().equals(last.by()))
        .forEach(r -> back.add(new TakenBack(name, r.id(), at)));
    Collections.reverse(back);
    return back;
  }

  @Override
  void tell(PrintWriter out, Farm after, List<? extends Entry> said) {
    out.println("Taken back: " + said.size() + (said.size() == 1 ? " entry." : " entries."));
    if (after.sessions().find(name).isEmpty()) {
      out.println("Session " + name + " is no longer planned.");
    }
  }
}
