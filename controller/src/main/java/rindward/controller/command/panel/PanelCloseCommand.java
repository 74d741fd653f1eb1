package rindward.controller.command.panel;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Entry;
import rindward.controller.journal.SessionClosed;
import rindward.controller.lot.Cooking;
import rindward.controller.lot.Session;

/** {@code panel close}: the session is over and the codes are opened. */
@Command(
    name = "close",
    description = {
      "End a session: nothing more is scored, and its results may be seen.",
      "Of samples that 'panel cook' was not told of, say which fruits were in the cups."
    },
    footer = {
      "",
      "Examples:",
      "  rindward panel close --settings shed.toml winter",
      "  rindward panel close --settings shed.toml winter --as-planned"
    })
final class PanelCloseCommand extends SayingCommand {
  @Parameters(paramLabel = "NAME", description = "Name of the session.")
  private String name = "";

  @ArgGroup private @Nullable Fruits fruits;

  /** One answer or the other. */
  private static final class Fruits {
    @Option(names = "--as-planned", description = "The fruits that were planned were cooked.")
    private boolean asPlanned;

    @Option(
        names = "--fruits-not-known",
        description =
            "Nobody knows which fruits were in the cups: it counts for this tasting and for no"
                + " variety.")
    private boolean notKnown;
  }

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    List<Entry> entries = new ArrayList<>();
    Session session = farm.session(name).orElseThrow(() -> wrong(Farm.noSession(name)));
    if (fruits != null && fruits.asPlanned) {
      entries.addAll(new Cooking(farm.lots()).asPlanned(session, at));
    } else if (fruits == null && session.closed().isEmpty() && !session.fruitsOpen().isEmpty()) {
      // The journal would refuse it too, but knows no options.
      throw wrong(
          "neither --as-planned nor --fruits-not-known was given but nobody said which fruits were"
              + " cooked for "
              + String.join(", ", session.fruitsOpen().stream().map(s -> s.name()).toList())
              + ": it must be one of them, or 'panel cook' first");
    }
    entries.add(new SessionClosed(session.name(), fruits != null && fruits.notKnown, at));
    return entries;
  }

  @Override
  protected void tell(PrintWriter out, Farm after, List<? extends Entry> said) {
    out.println("Session " + name + " is closed; 'panel results " + name + "' opens the codes.");
  }
}
