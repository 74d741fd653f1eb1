package rindward.controller.exchange;

/** Text that people typed, made harmless between the tags of a sheet. */
final class Xml {
  private Xml() {}

  static String text(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
