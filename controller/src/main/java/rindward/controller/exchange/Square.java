package rindward.controller.exchange;

import io.nayuki.qrcodegen.QrCode;

/**
 * Text as a square that a telephone reads (QR code, ISO/IEC 18004), black on white and drawn in
 * modules: one module is one unit.
 *
 * @param modules its width and height, with the white around it
 * @param path the black modules, as the data of an SVG path
 */
public record Square(int modules, String path) {
  /** Modules of white around the square (ISO/IEC 18004: four). */
  private static final int QUIET = 4;

  /** Returns the square that says a text. A quarter of it may be soiled and it still reads. */
  public static Square of(String says) {
    QrCode code = QrCode.encodeText(says, QrCode.Ecc.QUARTILE);
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < code.size; y++) {
      for (int x = 0; x < code.size; x++) {
        if (code.getModule(x, y)) {
          path.append("M%d %dh1v1h-1z".formatted(x + QUIET, y + QUIET));
        }
      }
    }
    return new Square(code.size + 2 * QUIET, path.toString());
  }

  /** Returns it as an SVG image of its own, white also where the page is dark. */
  public String svg() {
    return """
    <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d">\
    <path fill="#fff" d="M0 0H%dV%dH0z"/>\
    <path shape-rendering="crispEdges" d="%s"/></svg>
    """
        .formatted(modules, modules, modules, modules, path);
  }
}
