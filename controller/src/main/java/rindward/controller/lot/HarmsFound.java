package rindward.controller.lot;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rindward.controller.crop.Harm;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Entry;
import rindward.controller.journal.HarmLifted;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.TakenBack;
import rindward.controller.journal.Withdrawn;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.SessionPlan;

/**
 * What was found in fruits that may make people ill, whoever said it: a taster of a cup, a cook, or
 * somebody in a kitchen. One finding is enough, and it counts from the moment it is said, whether
 * or not its session is over. Who tapped by mistake takes it back within a minute; after that it
 * stands, though its entry be withdrawn or corrected, until the owner lifts it.
 */
final class HarmsFound {
  private static final Duration MISTAKE = Duration.ofMinutes(1);

  /** A finding, by whom, and the last entry that says it. */
  private record Said(Recorded first, Set<Harm> harms, long last) {}

  private final Map<String, SessionPlanned> planned = new HashMap<>();
  private final Map<String, SessionPlan> plans = new HashMap<>();
  private final Map<Long, Said> found = new LinkedHashMap<>();
  private final Map<String, Long> openCups = new HashMap<>();
  private final Map<String, Long> lifted = new HashMap<>();
  private final Map<String, List<HarmFound>> byLot = new HashMap<>();

  private HarmsFound() {}

  /**
   * Gathers what was found, by the code of the lot.
   *
   * @param standing the same without what was corrected or taken back
   */
  static Map<String, List<HarmFound>> byLot(List<Recorded> journal, List<Recorded> standing) {
    HarmsFound all = new HarmsFound();
    journal.forEach(all::hear);
    if (all.found.isEmpty()) {
      return Map.of();
    }
    for (Recorded recorded : standing) {
      if (recorded.entry() instanceof HarmLifted lift) {
        all.lifted.merge(lift.lot(), recorded.id(), Math::max);
      }
    }
    all.found.values().forEach(all::tell);
    return all.byLot;
  }

  private void hear(Recorded recorded) {
    Entry entry = recorded.entry();
    if (entry instanceof SessionPlanned plan) {
      planned.put(plan.session(), plan);
    } else if (entry instanceof Scored score && score.attribute() == Attribute.BITTER) {
      tapped(score, recorded);
    } else if (entry instanceof Corrected corrected) {
      corrected(corrected, recorded);
    } else if (entry instanceof Withdrawn withdrawn) {
      takenBack(withdrawn.entry(), recorded);
    } else if (entry instanceof TakenBack back) {
      takenBack(back.entry(), recorded);
    } else if (!harms(entry).isEmpty()) {
      found.put(recorded.id(), new Said(recorded, harms(entry), recorded.id()));
    }
  }

  /** The phone's time of both taps counts: they may come together, a day late. */
  private void tapped(Scored score, Recorded recorded) {
    String cup = score.session() + "/" + score.code();
    Long before = openCups.get(cup);
    if (Attribute.BITTER.stopsSample(score.value())) {
      if (before == null) {
        openCups.put(cup, recorded.id());
        found.put(recorded.id(), new Said(recorded, Set.of(Harm.BITTER), recorded.id()));
      }
      return;
    }
    Said said = before == null ? null : found.get(before);
    if (said != null && !score.at().isAfter(said.first().entry().at().plus(MISTAKE))) {
      openCups.remove(cup);
      found.remove(before);
    }
  }

  private void corrected(Corrected corrected, Recorded recorded) {
    Set<Harm> harms = harms(corrected.instead());
    Said before = found.get(corrected.entry());
    if (!harms.isEmpty()) {
      Recorded now =
          new Recorded(
              corrected.entry(), recorded.recordedAt(), recorded.by(), corrected.instead());
      found.put(corrected.entry(), new Said(now, harms, recorded.id()));
    } else if (before != null) {
      takenBack(corrected.entry(), recorded);
    }
  }

  private void takenBack(long entry, Recorded by) {
    Said said = found.get(entry);
    if (said != null
        && said.first().by().equals(by.by())
        && !by.recordedAt().isAfter(said.first().recordedAt().plus(MISTAKE))) {
      found.remove(entry);
    }
  }

  private static Set<Harm> harms(Entry entry) {
    if (entry instanceof KitchenTasted taste) {
      return taste.cut().harms();
    }
    return entry instanceof SampleCooked cooked ? cooked.cut().harms() : Set.of();
  }

  private void tell(Said said) {
    Recorded first = said.first();
    if (first.entry() instanceof KitchenTasted taste) {
      for (Harm harm : said.harms()) {
        add(
            said,
            new HarmFound(harm, taste.lot(), taste.fruit(), null, null, first.id(), taste.at()));
      }
    } else if (first.entry() instanceof SampleCooked cooked) {
      for (Harm harm : said.harms()) {
        add(
            said,
            new HarmFound(
                harm,
                cooked.lot(),
                cooked.fruit(),
                cooked.session(),
                cooked.sample(),
                first.id(),
                cooked.at()));
      }
    } else if (first.entry() instanceof Scored score) {
      served(score)
          .ifPresent(
              sample ->
                  add(
                      said,
                      new HarmFound(
                          Harm.BITTER,
                          sample.lot(),
                          sample.fruits().size() == 1 ? sample.fruits().get(0) : null,
                          score.session(),
                          sample.name(),
                          first.id(),
                          score.at())));
    }
  }

  /** Returns what was in a cup. */
  private Optional<Served> served(Scored score) {
    SessionPlanned plan = planned.get(score.session());
    if (plan == null) {
      return Optional.empty();
    }
    return plans.computeIfAbsent(score.session(), name -> plan.plan()).sheets().stream()
        .flatMap(sheet -> sheet.cups().stream())
        .filter(cup -> cup.code().equals(score.code()))
        .map(Cup::sample)
        .findFirst()
        .flatMap(name -> plan.samples().stream().filter(s -> s.name().equals(name)).findFirst());
  }

  private void add(Said said, HarmFound harm) {
    if (said.last() > lifted.getOrDefault(harm.lot(), 0L)) {
      byLot.computeIfAbsent(harm.lot(), lot -> new ArrayList<>()).add(harm);
    }
  }
}
