package rindward.controller.command.panel;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.TakenBack;
import rindward.controller.lot.TakingBack;

/** {@code panel undo}: what was said last of a session should not have been said. */
@Command(
    name = "undo",
    description =
        "Take back what was last said of a session that is not closed: a fruit that was cooked,"
            + " which then lies in its lot again, a cup that was scored, or, if nothing else was"
            + " said, its plan. The journal keeps both.",
    footer = {"", "Example:", "  rindward panel undo --settings shed.toml winter"})
final class PanelUndoCommand extends SayingCommand {
  @Parameters(paramLabel = "NAME", description = "Name of the session.")
  private String name = "";

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    TakingBack back = new TakingBack(farm.journal());
    List<Recorded> last = back.lastOf(name);
    if (last.isEmpty()) {
      throw wrong(Farm.noSession(name));
    }
    return back.entries(last, at);
  }

  @Override
  protected void tell(PrintWriter out, Farm after, List<? extends Entry> said) {
    long back = said.stream().filter(TakenBack.class::isInstance).count();
    out.println("Taken back: " + back + (back == 1 ? " entry." : " entries."));
    if (after.session(name).isEmpty()) {
      out.println("Session " + name + " is no longer planned.");
    }
  }
}
