package rindward.controller.exchange;

import java.util.List;

/**
 * The label of one lot: its code large enough to read at arm's length, and as a square that a
 * telephone reads.
 *
 * @param code the lot's code
 * @param lines what else is printed, at most three short lines
 * @param says what the square says: the code, or the address of the lot's page
 */
public record Label(String code, List<String> lines, String says) {
  private static final int WIDTH_MM = 63;
  private static final int HEIGHT_MM = 30;
  private static final int SQUARE_MM = 26;

  public Label {
    lines = List.copyOf(lines);
  }

  /** A label whose square says the code and nothing else. */
  public Label(String code, List<String> lines) {
    this(code, lines, code);
  }

  /**
   * Returns the same label with a square that opens the lot's page.
   *
   * @param site address of the dashboard, such as {@code http://shed.local:8420}
   */
  public Label linked(String site) {
    String end = site.endsWith("/") ? "lot/" : "/lot/";
    return new Label(code, lines, site + end + code);
  }

  /** Returns the label as one SVG image, 63 by 30 mm. */
  public String svg() {
    StringBuilder svg = new StringBuilder();
    svg.append(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%dmm\" height=\"%dmm\""
                .formatted(WIDTH_MM, HEIGHT_MM))
        .append(" viewBox=\"0 0 %d %d\" role=\"img\">".formatted(WIDTH_MM, HEIGHT_MM))
        .append("<title>Lot ")
        .append(Xml.text(code))
        .append("</title>");
    square(svg);
    svg.append(
            "<text x=\"30\" y=\"12\" font-family=\"monospace\" font-size=\"%s\""
                .formatted(code.length() > 4 ? "4.5" : "11"))
        .append(" font-weight=\"bold\">")
        .append(Xml.text(code))
        .append("</text>");
    int y = 18;
    for (String line : lines) {
      svg.append(
              "<text x=\"30\" y=\"%d\" font-family=\"sans-serif\" font-size=\"3.2\">".formatted(y))
          .append(Xml.text(line))
          .append("</text>");
      y += 4;
    }
    return svg.append("</svg>").toString();
  }

  private void square(StringBuilder svg) {
    Square square = Square.of(says);
    svg.append(
            "<svg x=\"2\" y=\"2\" width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\">"
                .formatted(SQUARE_MM, SQUARE_MM, square.modules(), square.modules()))
        .append("<path shape-rendering=\"crispEdges\" d=\"")
        .append(square.path())
        .append("\"/></svg>");
  }
}
