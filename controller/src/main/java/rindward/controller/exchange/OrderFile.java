package rindward.controller.exchange;

import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import rindward.controller.journal.Decision;
import rindward.controller.variety.OrderSheet;
import rindward.controller.variety.OrderSheet.Line;

/** What to order seed of, as text to read and as a table for a spreadsheet. */
public final class OrderFile {
  private static final CSVFormat CSV = CSVFormat.DEFAULT.builder().setRecordSeparator("").get();

  private OrderFile() {}

  /** Returns the sheet as text, a heading for each decision. */
  public static String text(OrderSheet sheet) {
    StringBuilder text = new StringBuilder();
    String heading = "";
    for (Line line : sheet.lines()) {
      String own = line.decision().map(Decision::words).orElse("nobody can say yet");
      if (!own.equals(heading)) {
        heading = own;
        text.append(own.substring(0, 1).toUpperCase(Locale.ROOT)).append(own.substring(1));
        text.append('\n');
      }
      text.append("  ").append(line.name().variety());
      text.append(" (").append(line.name().crop()).append(')');
      if (!line.reason().isEmpty()) {
        text.append(": ").append(line.reason());
      }
      text.append(line.isDecided() || line.decision().isEmpty() ? "" : " (suggested, not decided)");
      text.append("\n    ").append(line.answers()).append('\n');
      if (line.stillKept() > 0) {
        text.append("    Provisional: ").append(line.stillKept());
        text.append(line.stillKept() == 1 ? " fruit is" : " fruits are").append(" still kept.\n");
      }
      line.revised().ifPresent(now -> text.append("    Since then: ").append(now).append('\n'));
    }
    return text.toString();
  }

  /** Returns the sheet as CSV. */
  public static String csv(OrderSheet sheet) {
    StringBuilder text =
        new StringBuilder("crop,variety,decision,decided,reason,answers,still_kept,since_then\n");
    for (Line line : sheet.lines()) {
      Optional<Decision> decision = line.decision();
      text.append(
              CSV.format(
                  Cell.written(line.name().crop()),
                  Cell.written(line.name().variety()),
                  decision.map(Decision::toString).orElse(""),
                  line.isDecided() ? "yes" : "no",
                  Cell.written(line.reason()),
                  Cell.written(line.answers()),
                  line.stillKept(),
                  Cell.written(line.revised().orElse(""))))
          .append('\n');
    }
    return text.toString();
  }
}
