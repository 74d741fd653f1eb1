package rindward.controller.exchange;

import java.util.List;

/** Labels of many lots on paper: three abreast on A4 or letter. */
public final class LabelSheet {
  private static final String HEAD =
      """
      <!doctype html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <title>Labels</title>
      <style>
        @page { margin: 8mm; }
        body { margin: 0; }
        main { display: grid; grid-template-columns: repeat(3, 63mm); gap: 2mm; }
        svg { display: block; break-inside: avoid; }
        main > svg { outline: 0.2mm dashed #888; }
      </style>
      </head>
      <body>
      <main>
      """;

  private LabelSheet() {}

  /** Returns one page of HTML that prints. */
  public static String html(List<Label> labels) {
    StringBuilder html = new StringBuilder(HEAD);
    labels.forEach(label -> html.append(label.svg()).append('\n'));
    return html.append("</main>\n</body>\n</html>\n").toString();
  }
}
