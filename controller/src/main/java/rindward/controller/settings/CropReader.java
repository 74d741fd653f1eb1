package rindward.controller.settings;

import static rindward.controller.settings.CropKinds.DAYS;
import static rindward.controller.settings.CropKinds.PERCENT;
import static rindward.controller.settings.CropKinds.TEMPERATURES;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Crop;
import rindward.controller.crop.Cure;
import rindward.controller.crop.Days;
import rindward.controller.crop.EatingPhase;
import rindward.controller.crop.Keeping;
import rindward.controller.crop.Mark;
import rindward.controller.crop.Maturity;
import rindward.controller.crop.SpeciesGroup;

/**
 * Reads the table of one type. What it does not name is that of the base: of the type itself where
 * the grower changes one that is known, of another where it says {@code like}.
 */
final class CropReader {
  private final CitedReader in;
  private final TableReader table;
  private final Optional<Crop> itself;
  private final Optional<Crop> base;
  private final HarmRules harms;

  /**
   * @param in table of the type
   * @param itself the type as known so far
   * @param like the type it is like, if it says so
   * @param harms what makes fruits of each group harmful
   */
  CropReader(CitedReader in, Optional<Crop> itself, Optional<Crop> like, HarmRules harms) {
    this.in = in;
    this.harms = harms;
    this.table = in.table();
    this.itself = itself;
    this.base = like.or(() -> itself);
  }

  /** Returns the type; empty where something in its table was wrong. */
  Optional<Crop> read() {
    int before = table.problems().count();
    table.has("like");
    String name = in.plain("name", Kind.TEXT, itself.map(Crop::name));
    SpeciesGroup group = in.plain("group", Kind.choice(SpeciesGroup.class), base.map(Crop::group));
    List<String> aliases =
        table.optional("aliases", Kind.TEXTS, itself.map(Crop::aliases).orElse(List.of()));
    Optional<Cited<String>> noCure = noCure();
    Optional<Cure> cure = noCure.isPresent() ? Optional.empty() : cure();
    Optional<Keeping> keeping = keeping();
    Optional<Maturity> maturity = maturity();
    List<Cited<EatingPhase>> phases =
        table.has("eating")
            ? in.list("eating").stream().flatMap(phase -> phase(phase).stream()).toList()
            : base.map(Crop::phases).orElse(List.of());
    Optional<Mark> solubleSolids = mark("soluble-solids", base.flatMap(Crop::solubleSolids));
    Optional<Mark> dryMatter = mark("dry-matter", base.flatMap(Crop::dryMatter));
    List<Cited<String>> cautions = cautions();
    table.rejectUnknown();
    if (table.problems().count() > before || keeping.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Crop(
            table.name(),
            name,
            group,
            aliases,
            cure,
            noCure,
            keeping.get(),
            maturity,
            phases,
            solubleSolids,
            dryMatter,
            cautions,
            harms.of(group)));
  }

  private Optional<Cited<String>> noCure() {
    if (table.has("cure")) {
      if (table.has("no-cure")) {
        table.problem(
            "no-cure",
            table.path("no-cure") + " stood beside cure but it must be one or the other");
      }
      return Optional.empty();
    }
    return in.optional("no-cure", Kind.TEXT, base.flatMap(Crop::noCure));
  }

  private Optional<Cure> cure() {
    Optional<Cure> known = base.flatMap(Crop::cure);
    if (table.has("cure")) {
      return in.below("cure").flatMap(cure -> CureReader.read(cure, known));
    }
    if (known.isEmpty() && !table.has("no-cure")) {
      table.missing("cure", "it must be a table, or no-cure must say why there is none");
    }
    return known;
  }

  private Optional<Keeping> keeping() {
    Optional<Keeping> known = base.map(Crop::keeping);
    if (table.has("keep")) {
      return in.below("keep").flatMap(keep -> KeepingReader.read(keep, known));
    }
    if (known.isEmpty()) {
      table.missing("keep", "it must be a table");
    }
    return known;
  }

  private Optional<Maturity> maturity() {
    Optional<Maturity> known = base.flatMap(Crop::maturity);
    return in.below("maturity")
        .map(
            part -> {
              Optional<Maturity.Ripening> ripening = known.flatMap(Maturity::ripening);
              if (part.table().has("ripening")) {
                ripening = part.below("ripening").map(CropReader::ripening);
              }
              Maturity maturity =
                  new Maturity(part.required("ripe", DAYS, known.map(Maturity::ripe)), ripening);
              part.table().rejectUnknown();
              return maturity;
            })
        .or(() -> known);
  }

  private static Maturity.Ripening ripening(CitedReader in) {
    Maturity.Ripening ripening =
        new Maturity.Ripening(
            in.required("not-before", DAYS, Optional.empty()),
            in.required("temperature", TEMPERATURES, Optional.empty()),
            in.required("takes", DAYS, Optional.empty()));
    in.table().rejectUnknown();
    return ripening;
  }

  private static Optional<Cited<EatingPhase>> phase(CitedReader in) {
    TableReader table = in.table();
    int before = table.problems().count();
    String name = table.required("name", Kind.TEXT);
    EatingPhase.Since since = table.required("since", Kind.choice(EatingPhase.Since.class));
    Days begins = table.required("begins", DAYS);
    Days ends = table.required("ends", DAYS);
    String sentence = table.required("say", Kind.TEXT);
    if (ends.low() < begins.low() || ends.high() < begins.high()) {
      table.refuse("ends", "neither end may come before the same end of begins");
    }
    List<String> sources = in.cite(name).sources();
    return table.problems().count() == before
        ? Optional.of(new Cited<>(new EatingPhase(name, since, begins, ends, sentence), sources))
        : Optional.empty();
  }

  private Optional<Mark> mark(String key, Optional<Mark> known) {
    return in.below(key)
        .flatMap(
            part -> {
              int before = part.table().problems().count();
              var passable = part.required("passable", PERCENT, known.map(Mark::passable));
              var good = part.required("good", PERCENT, known.map(Mark::good));
              part.table().rejectUnknown();
              if (passable.value() > good.value()) {
                part.table()
                    .problem(
                        "good",
                        part.table().path("good")
                            + " was '"
                            + Kind.plain(good.value())
                            + "' but it must not be below passable, "
                            + Kind.plain(passable.value()));
              }
              return part.table().problems().count() == before
                  ? Optional.of(new Mark(passable, good))
                  : Optional.<Mark>empty();
            })
        .or(() -> known);
  }

  private List<Cited<String>> cautions() {
    if (!table.has("cautions")) {
      return base.map(Crop::cautions).orElse(List.of());
    }
    List<Cited<String>> cautions = new ArrayList<>();
    for (CitedReader caution : in.list("cautions")) {
      cautions.add(caution.cite(caution.table().required("say", Kind.TEXT)));
    }
    return cautions;
  }
}
