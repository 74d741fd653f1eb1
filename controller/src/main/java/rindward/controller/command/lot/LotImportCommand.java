package rindward.controller.command.lot;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.exchange.LotFile;
import rindward.controller.exchange.LotFile.Row;
import rindward.controller.exchange.RecordingException;
import rindward.controller.exchange.RejectedRow;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.Planted;
import rindward.controller.lot.LotCodes;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.EntryService.Refused;
import rindward.controller.store.Journal;

/** {@code lot import}: a plot plan, a harvest list or a whole journal from a file. */
@Command(
    name = "import",
    description =
        "Say everything in a CSV file: a plot plan (kind planted), a harvest list (kind harvested),"
            + " or what 'lot export' wrote. Every bad line is listed; then nothing is taken, unless"
            + " the good lines are accepted. A plan's lots without a code are given one. What is"
            + " known already is left out: a plot by its season and name, anything else by all it"
            + " says.",
    footer = {
      "",
      "Example:",
      "  rindward lot import --settings shed.toml plan.csv",
      "  rindward lot import --settings shed.toml plan.csv --look",
      "",
      "A plot plan:",
      "  kind,at,plot,crop,variety,check,plants,sown,transplanted,expected_days",
      "  planted,2026-04-01,P7,kabocha,Winterglut,no,6,2026-04-20,2026-05-25,95"
    })
final class LotImportCommand extends ShedCommand {
  @Parameters(paramLabel = "FILE", description = "CSV file in UTF-8, columns named at the top.")
  private Path file = Path.of("lots.csv");

  @Option(names = "--accept-good-lines", description = "Take what is good, leave out what is bad.")
  private boolean acceptGoodLines;

  @Option(names = "--look", description = "Show what would be added, and add nothing.")
  private boolean look;

  @Option(names = "--by", paramLabel = "NAME", description = "Who says so; the user if not given.")
  private String by = System.getProperty("user.name", "somebody");

  @Override
  protected int on(Settings settings) {
    try (Database database = new Database(settings.store())) {
      EntryService door = new EntryService(new Journal(database), settings.crops());
      return take(door, Farm.of(settings, door.journal(), Instant.now()));
    } catch (RecordingException e) {
      return complain(String.valueOf(e.getMessage()), ExitCode.WRONG_USAGE);
    }
  }

  private int take(EntryService door, Farm farm) throws RecordingException {
    LotFile.Content content = LotFile.read(file, farm.settings().zone(), farm::cropKey);
    KnownRows known = new KnownRows(farm);
    List<RejectedRow> bad = new ArrayList<>(content.rejected());
    List<Row> fresh = new ArrayList<>();
    for (Row row : content.rows()) {
      known
          .contradiction(row.entry())
          .ifPresent(sentence -> bad.add(new RejectedRow(row.line(), sentence)));
      if (known.isNew(row.entry())) {
        fresh.add(row);
      }
    }
    int before = content.rows().size() + content.rejected().size() - fresh.size() - bad.size();
    List<Row> good = withCodes(fresh, farm);
    List<Refused> refusals = door.refusals(entries(good), farm.now());
    refusals.forEach(r -> bad.add(new RejectedRow(good.get(r.index()).line(), r.sentence())));
    // From the last on, so that the places of the others still hold.
    for (int i = refusals.size() - 1; i >= 0; i--) {
      good.remove(refusals.get(i).index());
    }
    bad.sort(Comparator.comparingLong(RejectedRow::line));
    bad.forEach(
        row ->
            complain(file + " line " + row.line() + ": " + row.sentence(), ExitCode.WRONG_USAGE));
    if (look) {
      good.forEach(row -> out().println("  line " + row.line() + ": " + told(row.entry())));
      return say(
          "Would be added: " + good.size() + lines(before, good.size() + bad.size()),
          bad.isEmpty() ? ExitCode.FINE : ExitCode.NOT_WELL);
    }
    if (!bad.isEmpty() && !acceptGoodLines) {
      return complain(
          "Nothing was taken: mend these lines, or add --accept-good-lines", ExitCode.WRONG_USAGE);
    }
    door.sayAll(entries(good), by, UUID.randomUUID().toString(), farm.now());
    if (!good.isEmpty()) {
      out()
          .println(
              "All of it is taken back by: rindward lot undo --settings shed.toml "
                  + good.get(0).entry().subject());
    }
    return say(
        "Taken: " + good.size() + lines(before, good.size() + bad.size()),
        bad.isEmpty() ? ExitCode.FINE : ExitCode.NOT_WELL);
  }

  private static String lines(int known, int others) {
    return " of "
        + (known + others)
        + " lines"
        + (known == 0 ? "." : "; " + known + (known == 1 ? " is" : " are") + " known already.");
  }

  private static String told(Entry entry) {
    Map<String, String> row = new LinkedHashMap<>(EntryKinds.row(entry));
    String kind = row.remove("kind");
    return kind
        + " "
        + row.entrySet().stream()
            .filter(field -> !field.getValue().isEmpty())
            .map(field -> field.getKey() + "=" + field.getValue())
            .collect(Collectors.joining(" "));
  }

  private static List<Entry> entries(List<Row> rows) {
    return rows.stream().map(Row::entry).toList();
  }

  /** Gives a code to every planned lot that has none. */
  private List<Row> withCodes(List<Row> rows, Farm farm) {
    Set<String> taken = new HashSet<>(farm.lots().codes());
    rows.forEach(row -> taken.add(row.entry().subject()));
    List<Row> coded = new ArrayList<>();
    for (Row row : rows) {
      if (row.entry() instanceof Planted plan && plan.lot().isEmpty()) {
        String code = LotCodes.suggest(taken).orElse("");
        taken.add(code);
        coded.add(new Row(row.line(), plan.withLot(code)));
      } else {
        coded.add(row);
      }
    }
    return coded;
  }
}
