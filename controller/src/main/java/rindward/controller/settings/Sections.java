package rindward.controller.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A settings file cut at the lines that begin a table, without asking whether it is TOML: a slip of
 * the pen costs the table it stands in and no other. In doubt a line belongs to the table above it.
 */
final class Sections {
  /** Those that say what hangs on the board, and what acts when the program hangs. */
  private static final Set<String> WIRING = Set.of("outputs", "probes", "watchdog", "heartbeat");

  private static final Set<String> VALUES = Set.of("true", "false", "inf", "nan");

  private static final Pattern HEADER =
      Pattern.compile(
          "\\s*\\[{1,2}\\s*(?:\"(?<quoted>[^\"]*)\"|'(?<plain>[^']*)'|(?<bare>[A-Za-z_][\\w-]*))"
              + "\\s*(?:[.\\]#].*)?");

  private static final Pattern TOP_KEY =
      Pattern.compile("\\s*[\"']?(?<key>[A-Za-z_][\\w-]*)[\"']?\\s*[.=].*");

  private Sections() {}

  /**
   * One piece of the file.
   *
   * @param table the first part of its table's name; empty before the first table
   * @param firstLine counted from 1
   * @param lines all of its lines, the one that begins it included
   */
  record Section(String table, int firstLine, List<String> lines) {
    Section {
      lines = List.copyOf(lines);
    }

    String text() {
      return String.join("\n", lines) + "\n";
    }

    int lastLine() {
      return firstLine + lines.size() - 1;
    }

    private boolean isOfWiring() {
      return table.isEmpty()
          ? lines.stream().map(TOP_KEY::matcher).anyMatch(Sections::isWiringKey)
          : WIRING.contains(table);
    }
  }

  /** Cuts a file. */
  static List<Section> of(String text) {
    List<Section> all = new ArrayList<>();
    String table = "";
    int first = 1;
    List<String> lines = new ArrayList<>();
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      String next = tableBegunBy(line);
      if (!next.isEmpty()) {
        all.add(new Section(table, first, lines));
        table = next;
        first = number;
        lines = new ArrayList<>();
      }
      lines.add(line);
    }
    all.add(new Section(table, first, lines));
    return all;
  }

  /**
   * Tells whether two files say the same of outputs, probes and safety, to the letter. A text of
   * several lines could hide a table, so where there is one all of the file must be the same.
   */
  static boolean haveSameWiring(String one, String other) {
    return hasLongText(one) || hasLongText(other)
        ? one.equals(other)
        : wiring(one).equals(wiring(other));
  }

  private static boolean hasLongText(String text) {
    return text.contains("\"\"\"") || text.contains("'''");
  }

  private static List<String> wiring(String text) {
    return of(text).stream()
        .filter(Section::isOfWiring)
        .flatMap(section -> section.lines().stream())
        .map(String::strip)
        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
        .toList();
  }

  private static boolean isWiringKey(Matcher key) {
    return key.matches() && WIRING.contains(key.group("key"));
  }

  /** Returns the name of the table that a line begins; empty when it begins none. */
  private static String tableBegunBy(String line) {
    Matcher header = HEADER.matcher(line);
    if (!header.matches()) {
      return "";
    }
    String bare = header.group("bare");
    if (bare != null) {
      return VALUES.contains(bare) ? "" : bare;
    }
    String quoted = header.group("quoted") == null ? header.group("plain") : header.group("quoted");
    return WIRING.contains(quoted) ? quoted : "";
  }
}
