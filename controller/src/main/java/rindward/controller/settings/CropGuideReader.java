package rindward.controller.settings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Nearest;
import rindward.controller.crop.Sources;

/**
 * Reads the crop guide that comes with Rindward, and what a grower changes in it or adds to it.
 * Both have the same form and pass the same checks.
 */
public final class CropGuideReader {
  private static final String FILE = "guide.toml";
  private static final String RESOURCE = "/rindward/controller/crop/" + FILE;
  private static final String SOURCES = "sources";
  private static final Pattern KEY = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  private CropGuideReader() {}

  /**
   * Returns the guide in the jar.
   *
   * @throws IllegalStateException if it has problems, which only a broken build can have
   */
  public static CropGuide builtIn() {
    Problems problems = new Problems();
    CropGuide guide = read(FILE, JarText.of(RESOURCE), problems);
    if (!problems.isEmpty()) {
      throw new IllegalStateException("the crop guide has problems: " + problems.list());
    }
    return guide;
  }

  /**
   * Returns the guide in {@code text}; with problems, only the types that had none.
   *
   * @param file name used in the sentences
   */
  static CropGuide read(String file, String text, Problems problems) {
    return TableReader.of(file, text, problems)
        .map(
            table -> types(table, new CropGuide(List.of(), new Sources(Map.of()), Map.of()), false))
        .orElseGet(() -> new CropGuide(List.of(), new Sources(Map.of()), Map.of()));
  }

  /**
   * Returns {@code guide} with what the grower changes and adds.
   *
   * @param crops the settings' table {@code crops}: one table a type, and {@code sources} for
   *     titles of the grower's own; its problems go where the table's do
   */
  static CropGuide withOwn(CropGuide guide, TableReader crops) {
    return types(crops, guide, true);
  }

  private static CropGuide types(TableReader table, CropGuide known, boolean own) {
    Sources sources = known.sources().with(titles(table));
    HarmRules harms = HarmRules.read(new CitedReader(table, sources, own), known);
    Map<String, Crop> crops = new LinkedHashMap<>();
    known.crops().forEach(crop -> crops.put(crop.key(), crop));
    table
        .tables()
        .forEach(
            (key, type) -> {
              if (!key.equals(SOURCES) && !key.equals(HarmRules.KEY)) {
                type(new CitedReader(type, sources, own), crops, harms)
                    .filter(crop -> isNamedRight(crop, type, crops))
                    .ifPresent(crop -> crops.put(key, crop));
              }
            });
    return new CropGuide(List.copyOf(crops.values()), sources, harms.all());
  }

  private static Map<String, String> titles(TableReader table) {
    Map<String, String> titles = new HashMap<>();
    table
        .table(SOURCES)
        .ifPresent(
            sources ->
                sources.keys().forEach(key -> titles.put(key, sources.required(key, Kind.TEXT))));
    return titles;
  }

  private static Optional<Crop> type(CitedReader in, Map<String, Crop> known, HarmRules harms) {
    TableReader table = in.table();
    Optional<Crop> like = Optional.empty();
    if (table.has("like")) {
      String name = table.required("like", Kind.TEXT);
      like = Optional.ofNullable(known.get(name));
      if (like.isEmpty()) {
        table.refuse(
            "like",
            "it must be a type that stands before this one"
                + Nearest.to(name, known.keySet())
                    .map(near -> "; did you mean '" + near + "'?")
                    .orElse(""));
        return Optional.empty();
      }
    }
    return new CropReader(in, Optional.ofNullable(known.get(table.name())), like, harms).read();
  }

  private static boolean isNamedRight(Crop crop, TableReader table, Map<String, Crop> known) {
    int before = table.problems().count();
    List<String> names = new ArrayList<>(crop.aliases());
    names.add(crop.key());
    if (Set.copyOf(names).size() < names.size()) {
      table.refuse("aliases", "no name may come twice, nor the type's own key");
    }
    for (String name : names) {
      String[] way = name.equals(crop.key()) ? new String[0] : new String[] {"aliases"};
      if (!KEY.matcher(name).matches()) {
        table.conflict(
            name, "it must be lower-case letters, digits and hyphens, like 'pie-pumpkin'", way);
      }
      known.values().stream()
          .filter(other -> !other.key().equals(crop.key()))
          .filter(other -> other.key().equals(name) || other.aliases().contains(name))
          .findFirst()
          .ifPresent(
              other ->
                  table.conflict(
                      name, "it must not be a name that '" + other.key() + "' has already", way));
    }
    return table.problems().count() == before;
  }
}
