package rindward.controller.command.lot;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Entry;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Withdrawn;
import rindward.controller.lot.Lots;

/** {@code lot undo}: what was said last should not have been said. */
@Command(
    name = "undo",
    description =
        "Take back what was last said of a lot, together with whatever was said in the same breath:"
            + " several crates moved at once go back at once. The journal keeps both.",
    footer = {"", "Example:", "  rindward lot undo --settings shed.toml K4T"})
final class LotUndoCommand extends SayingCommand {
  @Parameters(paramLabel = "CODE", description = "Code of the lot.")
  private String code = "";

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    List<Recorded> about = farm.about(code);
    if (about.isEmpty()) {
      throw wrong("lot was '" + Farm.code(code) + "' but nothing was said of it");
    }
    Recorded last = about.get(about.size() - 1);
    List<Entry> back = new ArrayList<>();
    Lots.standing(farm.journal()).stream()
        .filter(r -> r.recordedAt().equals(last.recordedAt()) && r.by().equals(last.by()))
        .filter(r -> r.entry() instanceof OfLot)
        .forEach(r -> back.add(new Withdrawn(r.entry().subject(), r.id(), at)));
    Collections.reverse(back);
    return back;
  }

  @Override
  protected void tell(PrintWriter out, Farm after, List<? extends Entry> said) {
    out.println("Taken back: " + said.size() + (said.size() == 1 ? " entry." : " entries."));
    super.tell(out, after, said);
  }
}
