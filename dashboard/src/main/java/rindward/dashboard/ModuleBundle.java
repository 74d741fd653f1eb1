package rindward.dashboard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One file of a module and all that it imports. One by one they would cost a phone on a slow
 * network a round trip for every level of imports and for every six files. In the bundle each
 * module still has a scope of its own, and runs once, when it is first needed. Comments stay
 * behind, but for licences.
 *
 * <p>What is imported later is a further bundle without what the first one has. Understood is what
 * this site and its libraries write: imports of names in braces and of JSON, exported declarations
 * and lists, names handed on. What a module exports must not change later, and modules must not
 * import each other in a circle. Every name is resolved here: a browser that has begun with a
 * module because a header named it may no longer heed the import map.
 *
 * @param text the bundle, itself a module
 * @param modules the addresses of those in it
 */
record ModuleBundle(String text, Set<String> modules) {

  private static final String BEGIN =
      """
      // One file of many modules; each stands at an address of its own too, as it was written.
      const makers = {};
      const made = new Map();
      export const need = (address) => {
        if (!made.has(address)) {
          made.set(address, makers[address]());
        }
        return made.get(address);
      };
      export const add = (more) =>
        Object.entries(more).forEach(([address, make]) => (makers[address] ??= make));
      """;

  ModuleBundle {
    modules = Set.copyOf(modules);
  }

  /**
   * Returns the bundle with which the site begins.
   *
   * @param entry the address of the module that is run
   * @param source returns the text of the module at an address
   * @throws IllegalStateException naming the module that is in a circle or not understood
   */
  static ModuleBundle first(String entry, UnaryOperator<String> source, ImportMap map) {
    Writing writing = new Writing(source, map, Set.of());
    writing.write(entry);
    return writing.bundle(BEGIN, "need('" + entry + "');\n");
  }

  /**
   * Returns a bundle of what is imported later.
   *
   * @param first the bundle that is there by then
   * @param at the address of the first bundle
   * @throws IllegalStateException naming the module that is in a circle or not understood
   */
  static ModuleBundle further(
      String entry, UnaryOperator<String> source, ImportMap map, ModuleBundle first, String at) {
    Writing writing = new Writing(source, map, first.modules());
    List<String> exported = writing.write(entry);
    return writing.bundle(
        "import { add, need } from '" + at + "';\n",
        "export const { " + String.join(", ", exported) + " } = need('" + entry + "');\n");
  }

  /** Goes from module to module, those that are imported first. */
  private static final class Writing {
    private static final String STATEMENT = "(?m)(?:^|(?<=[;}]))";
    private static final String FROM = "\\s*[\"']([^\"']+)[\"'];?";
    private static final Pattern IMPORT =
        Pattern.compile(STATEMENT + "import\\s*(?:\\{([^}]*)\\}\\s*from)?" + FROM);
    private static final Pattern HANDED_ON =
        Pattern.compile(STATEMENT + "export\\s*(?:\\*|\\{([^}]*)\\})\\s*from" + FROM);
    private static final Pattern LIST = Pattern.compile(STATEMENT + "export\\s*\\{([^}]*)\\};?");
    private static final Pattern DECLARED =
        Pattern.compile("(?m)^export (?=(?:const|class|function|async function) (\\w+))");
    private static final Pattern DATA =
        Pattern.compile(
            STATEMENT
                + "import\\s+(\\w+)\\s+from\\s*'([^']+)'\\s+with\\s*\\{\\s*type:\\s*'json'\\s*};");
    private static final Pattern ADDRESS =
        Pattern.compile("\\bimport\\.meta\\.resolve\\((['\"])([^'\"]+)\\1\\)");
    private static final Pattern NOT_UNDERSTOOD =
        Pattern.compile(STATEMENT + "(?:import\\b(?!\\()|export\\b).*");

    /** On lines of their own; a licence goes where its code goes. */
    private static final Pattern COMMENT =
        Pattern.compile(
            "(?ms)^[ \\t]*(?://[^\\n]*|/\\*\\*(?!\\s*\\*?\\s*@license).*?\\*/[ \\t]*)\\n");

    private final UnaryOperator<String> source;
    private final ImportMap map;
    private final Set<String> there;
    private final Map<String, String> written = new LinkedHashMap<>();
    private final Set<String> underWay = new LinkedHashSet<>();

    Writing(UnaryOperator<String> source, ImportMap map, Set<String> there) {
      this.source = source;
      this.map = map;
      this.there = there;
    }

    ModuleBundle bundle(String begin, String end) {
      StringBuilder text = new StringBuilder(begin).append("add({\n");
      written.forEach((address, body) -> text.append(body));
      return new ModuleBundle(text.append("});\n").append(end).toString(), written.keySet());
    }

    /** Writes a module and returns what it hands over by name. */
    List<String> write(String address) {
      if (!underWay.add(address)) {
        throw new IllegalStateException(
            "modules must not import each other in a circle: " + underWay + " and " + address);
      }
      Exports exports = new Exports(new ArrayList<>(), new LinkedHashMap<>());
      String body = COMMENT.matcher(source.apply(address)).replaceAll("");
      body = replace(DATA, body, found -> data(found.group(1), address, found.group(2)));
      body = replace(HANDED_ON, body, found -> handOn(found, address, exports));
      body = replace(IMPORT, body, found -> names(found.group(1), need(address, found.group(2))));
      body = replace(LIST, body, found -> list(found.group(1), exports));
      body = replace(DECLARED, body, found -> declared(found.group(1), exports));
      body = replace(ADDRESS, body, found -> "'" + map.resolve(address, found.group(2)) + "'");
      Matcher left = NOT_UNDERSTOOD.matcher(body);
      if (left.find()) {
        throw new IllegalStateException(
            address + " says '" + left.group() + "' but a bundle knows no such import or export");
      }
      written.put(address, "'" + address + "': () => {\n" + body + exports + "},\n");
      underWay.remove(address);
      return List.copyOf(exports.byName().keySet());
    }

    private String need(String from, String what) {
      String address = map.resolve(from, what);
      if (!there.contains(address) && !written.containsKey(address)) {
        write(address);
      }
      return "need('" + address + "')";
    }

    private String data(String name, String from, String what) {
      String address = map.resolve(from, what);
      written.putIfAbsent(
          address, "'" + address + "': () => (" + source.apply(address).strip() + "),\n");
      return "const " + name + " = need('" + address + "');";
    }

    private String handOn(MatchResult found, String address, Exports exports) {
      String needed = need(address, found.group(2));
      if (found.group(1) == null) {
        exports.all().add(needed);
      } else {
        renamed(found.group(1))
            .forEach((theirs, name) -> exports.byName().put(name, needed + "." + theirs));
      }
      return "";
    }

    private static String names(@Nullable String braces, String needed) {
      if (braces == null) {
        return needed + ";";
      }
      List<String> taken = new ArrayList<>();
      renamed(braces).forEach((theirs, own) -> taken.add(theirs + ": " + own));
      return "const { " + String.join(", ", taken) + " } = " + needed + ";";
    }

    private static String list(String braces, Exports exports) {
      renamed(braces).forEach((own, name) -> exports.byName().put(name, own));
      return "";
    }

    private static String declared(String name, Exports exports) {
      exports.byName().put(name, name);
      return "";
    }

    /** Returns what stands in braces, {@code a as b, c}, as pairs of old name and new. */
    private static Map<String, String> renamed(String braces) {
      Map<String, String> names = new LinkedHashMap<>();
      for (String each : braces.split(",")) {
        String[] pair = each.strip().split("\\s+as\\s+");
        if (!pair[0].isEmpty()) {
          names.put(pair[0], pair[pair.length - 1]);
        }
      }
      return names;
    }

    private static String replace(
        Pattern pattern, String text, Function<MatchResult, String> with) {
      return pattern.matcher(text).replaceAll(found -> Matcher.quoteReplacement(with.apply(found)));
    }
  }

  /**
   * What a module exports.
   *
   * @param all modules whose exports it hands on
   * @param byName what stands behind each name of its own; these come last, and win
   */
  private record Exports(List<String> all, Map<String, String> byName) {

    @Override
    public String toString() {
      StringBuilder text = new StringBuilder("\nreturn {\n");
      all.forEach(module -> text.append("  ...").append(module).append(",\n"));
      byName.forEach((name, value) -> text.append("  " + name + ": " + value + ",\n"));
      return text.append("};\n").toString();
    }
  }
}
