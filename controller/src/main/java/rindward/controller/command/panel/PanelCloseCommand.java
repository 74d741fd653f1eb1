package rindward.controller.command.panel;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Entry;
import rindward.controller.journal.SessionClosed;

/** {@code panel close}: the session is over and the codes are opened. */
@Command(
    name = "close",
    description = "End a session: nothing more is scored, and its results may be seen.",
    footer = {"", "Example:", "  rindward panel close --settings shed.toml winter"})
final class PanelCloseCommand extends SayingCommand {
  @Parameters(paramLabel = "NAME", description = "Name of the session.")
  private String name = "";

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    return List.of(new SessionClosed(name, at));
  }

  @Override
  protected void tell(PrintWriter out, Farm after, List<? extends Entry> said) {
    out.println("Session " + name + " is closed; 'panel results " + name + "' opens the codes.");
  }
}
