package rindward.controller.command.lot;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.FieldTexts;
import rindward.controller.journal.Misstated;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lots;

/** {@code lot correct}: something was said wrong. */
@Command(
    name = "correct",
    description =
        "Say an earlier entry right; 'lot show CODE' lists entries with their numbers, and the"
            + " fields are the columns of 'lot export'. The old value is kept.",
    footer = {
      "",
      "Example:",
      "  rindward lot correct --settings shed.toml 12 --set count=5 --set at=2026-10-03T14:30"
    })
final class LotCorrectCommand extends SayingCommand {
  @Parameters(paramLabel = "ENTRY", description = "Number of the entry.")
  private long id;

  @Option(
      names = "--set",
      required = true,
      paramLabel = "FIELD=VALUE",
      description = "What it should have said.")
  private Map<String, String> changes = Map.of();

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    Recorded recorded =
        Lots.standing(farm.journal()).stream()
            .filter(r -> r.id() == id && r.entry() instanceof OfLot)
            .findFirst()
            .orElseThrow(() -> wrong("ENTRY was '" + id + "' but no entry of that number stands"));
    try {
      FieldTexts said = new FieldTexts(changes, farm.settings().zone(), UnaryOperator.identity());
      return List.of(new Corrected(id, EntryKinds.changed(recorded.entry(), said)));
    } catch (Misstated e) {
      throw wrong(e.sentence());
    }
  }
}
