package rindward.controller.exchange;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Preparation;
import rindward.controller.journal.Served;
import rindward.controller.lot.Session;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.Sheet;

/**
 * What the cook goes by: how everything is made ready, what is in each cup, and blanks for what is
 * seen of each fruit. It tells what the tasters must not know.
 */
public final class CookSheet {
  private CookSheet() {}

  /** Returns one page of HTML. */
  public static String html(String siteName, Session session) {
    StringBuilder html = new StringBuilder(PanelSheet.HEAD);
    html.append("<h1>")
        .append(Xml.text(siteName + ", " + session.name() + ": the cook's sheet"))
        .append("</h1>\n<p>Keep it away from the tasters: it tells what is in each cup.</p>\n")
        .append(PanelSheet.cautions())
        .append("<p>All samples alike: ")
        .append(Xml.text(words(session.planned().preparation())))
        .append("</p>\n<table>\n<tr>");
    for (String column :
        new String[] {
          "sample",
          "fruit",
          "weight",
          "flesh mm",
          "seeds",
          "colour",
          "liquid",
          "rot inside",
          "minutes",
          "doneness"
        }) {
      html.append("<td>").append(column).append("</td>");
    }
    html.append("</tr>\n");
    for (Served sample : session.planned().samples()) {
      for (String fruit : sample.fruits()) {
        html.append("<tr><th>")
            .append(Xml.text(sample.name()))
            .append("</th><td>")
            .append(Xml.text(fruit))
            .append("</td>")
            .append("<td></td>".repeat(8))
            .append("</tr>\n");
      }
    }
    html.append("</table>\n<table>\n");
    session.plan().sheets().forEach(sheet -> row(html, sheet));
    return html.append("</table>\n").append(PanelSheet.TAIL).toString();
  }

  private static void row(StringBuilder html, Sheet sheet) {
    html.append("<tr><td>").append(Xml.text(sheet.panelist())).append("</td>");
    for (Cup cup : sheet.cups()) {
      html.append("<td><b>")
          .append(cup.code())
          .append("</b> ")
          .append(Xml.text(cup.sample()))
          .append("</td>");
    }
    html.append("</tr>\n");
  }

  private static String degrees(String how, @Nullable Double celsius) {
    return celsius == null
        ? ""
        : how + String.format(Locale.ROOT, "%.1f", celsius).replace(".0", "") + " C";
  }

  private static String words(Preparation preparation) {
    return Stream.of(
            preparation.method(),
            degrees("at ", preparation.heatC()),
            preparation.part(),
            preparation.cut(),
            preparation.doneWhen().isEmpty() ? "" : "done when " + preparation.doneWhen(),
            degrees("served at ", preparation.servedC()))
        .filter(word -> !word.isEmpty())
        .collect(Collectors.joining(", "));
  }
}
