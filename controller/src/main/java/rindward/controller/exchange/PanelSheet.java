package rindward.controller.exchange;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rindward.controller.lot.Session;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Use;
import rindward.controller.tasting.design.Caution;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.Sheet;

/**
 * What lies before each taster: the cautions, and a blank for every question about every cup. It
 * shows codes and never what is in a cup.
 */
public final class PanelSheet {
  static final String HEAD =
      """
      <!doctype html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <title>Tasting</title>
      <style>
        @page { margin: 12mm; }
        body { font: 10pt sans-serif; }
        section { break-after: page; }
        table { border-collapse: collapse; width: 100%; margin-bottom: 6mm; }
        th, td { border: 0.2mm solid #444; padding: 1.5mm 2mm; text-align: left; }
        th { font: bold 13pt monospace; }
        tr { break-inside: avoid; }
        .caution { border: 0.5mm solid #000; padding: 2mm 4mm; }
        small { display: block; }
      </style>
      </head>
      <body>
      """;

  static final String TAIL = "</body>\n</html>\n";

  private PanelSheet() {}

  /** Returns one page of HTML a taster. */
  public static String html(String siteName, Session session, List<Sheet> sheets) {
    StringBuilder html = new StringBuilder(HEAD);
    for (Sheet sheet : sheets) {
      html.append("<section>\n<h1>")
          .append(Xml.text(siteName + ", " + session.name() + ": " + sheet.panelist()))
          .append("</h1>\n")
          .append(cautions());
      String warmUp = session.planned().warmUp();
      if (warmUp != null) {
        html.append("<p>First, to settle the mouth and not to score: ")
            .append(Xml.text(warmUp))
            .append("</p>\n");
      }
      html.append("<p>Taste from left to right; write a number in each field.</p>\n");
      for (int go = 0; go < session.plan().flights().size(); go++) {
        int flight = go;
        table(html, sheet.cups().stream().filter(cup -> cup.flight() == flight).toList());
      }
      html.append("</section>\n");
    }
    return html.append(TAIL).toString();
  }

  static String cautions() {
    return Stream.of(Caution.values())
        .map(caution -> "<li>" + Xml.text(caution.sentence()) + "</li>\n")
        .collect(Collectors.joining("", "<ul class=\"caution\">\n", "</ul>\n"));
  }

  private static void table(StringBuilder html, List<Cup> cups) {
    html.append("<table>\n<tr><td></td>");
    cups.forEach(cup -> html.append("<th>").append(cup.code()).append("</th>"));
    html.append("</tr>\n");
    String blanks = "<td></td>".repeat(cups.size());
    for (Attribute attribute : Attribute.values()) {
      html.append("<tr><td>")
          .append(Xml.text(attribute.question()))
          .append("<small>")
          .append(Xml.text(words(attribute)))
          .append("</small></td>")
          .append(blanks)
          .append("</tr>\n");
    }
    html.append("<tr><td>good for<small>")
        .append(Stream.of(Use.values()).map(Use::words).collect(Collectors.joining(", ")))
        .append("</small></td>")
        .append(blanks)
        .append("</tr>\n</table>\n");
  }

  private static String words(Attribute attribute) {
    List<String> words = attribute.words();
    int lowest = attribute.scale().lowest();
    return lowest
        + " "
        + words.get(0)
        + " ... "
        + attribute.scale().highest()
        + " "
        + words.get(words.size() - 1);
  }
}
