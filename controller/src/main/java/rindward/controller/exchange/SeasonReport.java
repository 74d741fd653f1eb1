package rindward.controller.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.variety.VarietyVerdict;
import rindward.controller.variety.Yield;

/**
 * Everything that is known of the varieties, as one page that stands alone and prints: no script,
 * and nothing is fetched.
 */
public final class SeasonReport {
  private static final String HEAD =
      """
      <!doctype html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <meta name="viewport" content="width=device-width, initial-scale=1">
      <title>Varieties</title>
      <style>
        @page { margin: 14mm; }
        body { font: 11pt/1.4 sans-serif; max-width: 180mm; margin: 0 auto; padding: 4mm; }
        h1 { font-size: 18pt; margin: 0; }
        h2 { font-size: 13pt; margin: 0 0 1mm; }
        table { border-collapse: collapse; width: 100%; margin: 5mm 0; font-size: 10pt; }
        th, td { border-bottom: 0.2mm solid #999; padding: 1mm 2mm 1mm 0; text-align: left;
          vertical-align: top; }
        section { break-inside: avoid; border-top: 0.4mm solid #000; padding-top: 3mm;
          margin-top: 6mm; }
        dl { margin: 0; } dt { font-weight: bold; margin-top: 2mm; } dd { margin: 0; }
        svg { width: 95mm; display: block; }
        svg text { font: 9px sans-serif; }
        .axis { fill: none; stroke: #888; } .curve { fill: none; stroke: #000; stroke-width: 1.6; }
        .provisional { font-style: italic; }
      </style>
      </head>
      <body>
      """;

  private SeasonReport() {}

  /**
   * Returns the page.
   *
   * @param day by which everything stands as told
   */
  public static String html(String siteName, LocalDate day, List<VarietyVerdict> verdicts) {
    StringBuilder html = new StringBuilder(HEAD);
    html.append("<h1>").append(Xml.text(siteName)).append("</h1>\n<p>What to grow again, by ");
    html.append(day).append(". Varieties are compared with the check of their own type only.</p>");
    html.append("\n<table>\n<tr><th>variety</th><th>ripens here?</th><th>eats well if ripe?</th>")
        .append("<th>keeps?</th><th>suggested</th><th>decided</th></tr>\n");
    verdicts.forEach(verdict -> row(html, verdict));
    html.append("</table>\n");
    verdicts.forEach(verdict -> section(html, verdict));
    return html.append("</body>\n</html>\n").toString();
  }

  private static void row(StringBuilder html, VarietyVerdict verdict) {
    html.append("<tr>");
    for (String cell :
        List.of(
            verdict.name().variety() + " (" + verdict.name().crop() + ")",
            verdict.ripening().answer().toString(),
            verdict.eating().words(),
            verdict.keeping().sentences().get(0),
            verdict.suggestion().words(),
            decided(verdict.decided()))) {
      html.append("<td>").append(Xml.text(cell)).append("</td>");
    }
    html.append("</tr>\n");
  }

  private static void section(StringBuilder html, VarietyVerdict verdict) {
    html.append("<section>\n<h2>")
        .append(Xml.text(verdict.name().variety() + " (" + verdict.name().crop() + ")"))
        .append("</h2>\n");
    if (verdict.stillKeeping() > 0) {
      html.append("<p class=\"provisional\">Provisional: ")
          .append(verdict.stillKeeping())
          .append(verdict.stillKeeping() == 1 ? " fruit is" : " fruits are")
          .append(" still kept.</p>\n");
    }
    html.append("<dl>\n");
    question(
        html,
        "Does it ripen here?",
        verdict.ripening().answer().toString(),
        verdict.ripensBecause());
    question(
        html, "Does it eat well if ripe?", verdict.eating().words(), verdict.eating().reasons());
    List<String> keeps = verdict.keeping().sentences();
    question(html, "Does it keep?", keeps.get(0), verdict.keepsBecause());
    question(html, "Suggested", verdict.suggestion().words(), verdict.suggestion().sentences());
    html.append("</dl>\n").append(SurvivalChart.svg(verdict.keeping().survival()));
    html.append("<dl>\n");
    question(
        html,
        "What did it bear?",
        "",
        verdict.yield().seasons().stream().map(Yield.Season::sentence).toList());
    List<String> besides = new ArrayList<>(verdict.besideCheck());
    besides.addAll(verdict.harmful());
    besides.addAll(verdict.apart());
    if (!besides.isEmpty()) {
      question(html, "Besides", "", besides);
    }
    question(html, "Decided", decided(verdict.decided()), List.of());
    html.append("</dl>\n</section>\n");
  }

  private static void question(
      StringBuilder html, String question, String answer, List<String> reasons) {
    html.append("<dt>").append(Xml.text(question)).append("</dt>");
    if (!answer.isEmpty()) {
      html.append("<dd>").append(Xml.text(answer)).append("</dd>");
    }
    reasons.forEach(reason -> html.append("<dd>").append(Xml.text(reason)).append("</dd>"));
    html.append('\n');
  }

  private static String decided(Optional<VarietyDecided> decided) {
    return decided
        .map(d -> d.decision().words() + (d.reason().isEmpty() ? "" : ": " + d.reason()))
        .orElse("not yet");
  }
}
