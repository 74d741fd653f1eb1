package rindward.controller.exchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rindward.controller.lot.Lot;

/**
 * A sheet of paper to take along: every lot that has fruits left, place by place, and blank columns
 * to write in and key in later.
 */
public final class WalkSheet {
  private static final String HEAD =
      """
      <!doctype html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <title>Walk sheet</title>
      <style>
        @page { margin: 12mm; }
        body { font: 11pt sans-serif; }
        table { border-collapse: collapse; width: 100%; margin-bottom: 8mm; }
        th, td { border: 0.2mm solid #444; padding: 1.5mm 2mm; text-align: left; }
        th { font-weight: normal; }
        tr { break-inside: avoid; height: 9mm; }
        td:first-child { font: bold 14pt monospace; }
        .blank { width: 16%; }
      </style>
      </head>
      <body>
      """;

  private static final String COLUMNS =
      """
      <tr><th>lot</th><th>what it is</th><th>sound</th><th class="blank">soft or rotten</th>\
      <th class="blank">eaten</th><th class="blank">weight</th><th class="blank">note</th></tr>
      """;

  private WalkSheet() {}

  /**
   * Returns one page of HTML that prints.
   *
   * @param day what is written at the top
   */
  public static String html(String siteName, LocalDate day, List<Lot> lots) {
    StringBuilder html = new StringBuilder(HEAD);
    html.append("<h1>").append(Xml.text(siteName)).append(", ").append(day).append("</h1>\n");
    Map<String, List<Lot>> places =
        lots.stream()
            .filter(lot -> lot.fruits().sound() > 0)
            .collect(Collectors.groupingBy(Lot::place, TreeMap::new, Collectors.toList()));
    places.forEach(
        (place, here) -> {
          html.append("<h2>").append(Xml.text(place)).append("</h2>\n<table>\n").append(COLUMNS);
          here.forEach(lot -> row(html, lot));
          html.append("</table>\n");
        });
    return html.append("</body>\n</html>\n").toString();
  }

  private static void row(StringBuilder html, Lot lot) {
    html.append("<tr><td>")
        .append(Xml.text(lot.code()))
        .append("</td><td>")
        .append(Xml.text((lot.crop() + " " + lot.variety()).strip()))
        .append("</td><td>")
        .append(lot.fruits().sound())
        .append("</td><td></td><td></td><td></td><td></td></tr>\n");
  }
}
