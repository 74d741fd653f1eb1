package rindward.controller.command.variety;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Decision;
import rindward.controller.journal.Entry;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.variety.VarietyName;

/** {@code variety decide}: what becomes of a variety next season. */
@Command(
    name = "decide",
    description = "Write down whether a variety is grown again, tried again, or dropped, and why.",
    footer = {
      "",
      "Examples:",
      "  rindward variety decide --settings shed.toml Winterglut grow-again",
      "  rindward variety decide --settings shed.toml Frostgate try-again 'sow in mid April'"
    })
final class VarietyDecideCommand extends SayingCommand {
  @Parameters(index = "0", paramLabel = "VARIETY", description = "Name of the variety.")
  private String variety = "";

  @Parameters(
      index = "1",
      paramLabel = "DECISION",
      description = "One of ${COMPLETION-CANDIDATES}.")
  private Decision decision = Decision.GROW_AGAIN;

  @Parameters(
      index = "2",
      arity = "0..1",
      paramLabel = "REASON",
      description = "Why; and how, if it is tried again.")
  private String reason = "";

  @Option(names = "--crop", description = "Its type, where two types have a variety of that name.")
  private @Nullable String crop;

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    VarietyName name = name(farm);
    return List.of(new VarietyDecided(name.crop(), name.variety(), decision, reason, at));
  }

  @Override
  protected void tell(PrintWriter out, Farm after, List<? extends Entry> said) {
    out.println(name(after).variety() + ": " + decision.words() + ".");
  }

  private VarietyName name(Farm farm) {
    List<VarietyName> names =
        farm.lots().all().stream()
            .map(lot -> new VarietyName(lot.crop(), lot.variety()))
            .distinct()
            .filter(n -> lower(n.variety()).equals(lower(variety)))
            .filter(n -> crop == null || n.crop().equals(farm.cropKey(crop)))
            .toList();
    if (names.isEmpty()) {
      throw wrong("VARIETY was '" + variety + "' but no lot of that variety came in");
    }
    if (names.size() > 1) {
      throw wrong(
          "VARIETY was '"
              + variety
              + "' but several types have one: give --crop, one of "
              + names.stream().map(VarietyName::crop).toList());
    }
    return names.get(0);
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
