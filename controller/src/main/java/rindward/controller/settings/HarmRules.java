package rindward.controller.settings;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rindward.controller.crop.Cited;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Harm;
import rindward.controller.crop.HarmRule;
import rindward.controller.crop.SpeciesGroup;

/**
 * Reads what makes fruits harmful. It is told by species group, so that a grower's own type has the
 * dangers of its kind without a word about them; settings cannot take one away.
 */
record HarmRules(Map<SpeciesGroup, List<HarmRule>> all) {
  static final String KEY = "harms";

  static HarmRules read(CitedReader in, CropGuide known) {
    Map<SpeciesGroup, List<HarmRule>> rules = new EnumMap<>(SpeciesGroup.class);
    known.harms().forEach((group, own) -> rules.put(group, new ArrayList<>(own)));
    if (in.own()) {
      if (in.table().has(KEY)) {
        in.table().refuse(KEY, "it must be left out: what is harmful is the guide's to say");
      }
      return new HarmRules(rules);
    }
    Map<String, TableReader> tables =
        in.table().table(KEY).map(TableReader::tables).orElse(Map.of());
    for (TableReader table : tables.values()) {
      CitedReader entry = new CitedReader(table, in.sources(), false);
      List<String> groups = table.required("groups", Kind.TEXTS);
      Harm harm = table.required("found", Kind.choice(Harm.class));
      HarmRule.Reach reach = table.required("stops", Kind.choice(HarmRule.Reach.class));
      String sisters = table.optional("sisters", Kind.TEXT, "");
      String seed = table.optional("seed", Kind.TEXT, "");
      Cited<String> say = entry.cite(table.required("say", Kind.TEXT));
      for (SpeciesGroup group : SpeciesGroup.values()) {
        if (groups.contains(Kind.word(group))) {
          rules
              .computeIfAbsent(group, g -> new ArrayList<>())
              .add(new HarmRule(harm, reach, say, sisters, seed));
        }
      }
    }
    return new HarmRules(rules);
  }

  List<HarmRule> of(SpeciesGroup group) {
    return all.getOrDefault(group, List.of());
  }
}
