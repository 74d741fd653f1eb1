package rindward.controller.lot;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rindward.controller.crop.Harm;
import rindward.controller.journal.Entry;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.SessionPlan;

/**
 * What was found in fruits that may make people ill, whoever said it: a taster of a cup, a cook, or
 * somebody in a kitchen. One finding is enough, and it counts from the moment it is said, whether
 * or not its session is over.
 */
final class HarmsFound {
  /** For so long a mistaken tap is taken back by another one of the same taster. */
  private static final Duration MISTAKE = Duration.ofMinutes(1);

  private final Map<String, SessionPlanned> planned = new HashMap<>();
  private final Map<String, SessionPlan> plans = new HashMap<>();
  private final Map<String, Map<String, Recorded>> bitter = new LinkedHashMap<>();
  private final Map<String, List<HarmFound>> byLot = new HashMap<>();

  private HarmsFound() {}

  /** Gathers what stands in a journal, by the code of the lot. */
  static Map<String, List<HarmFound>> byLot(List<Recorded> standing) {
    HarmsFound all = new HarmsFound();
    standing.forEach(all::hear);
    all.bitter.forEach((session, cups) -> cups.values().forEach(all::cup));
    return all.byLot;
  }

  private void hear(Recorded recorded) {
    Entry entry = recorded.entry();
    if (entry instanceof KitchenTasted taste) {
      for (Harm harm : taste.cut().harms()) {
        add(new HarmFound(harm, taste.lot(), taste.fruit(), null, null, recorded.id(), taste.at()));
      }
    } else if (entry instanceof SampleCooked cooked) {
      for (Harm harm : cooked.cut().harms()) {
        add(
            new HarmFound(
                harm,
                cooked.lot(),
                cooked.fruit(),
                cooked.session(),
                cooked.sample(),
                recorded.id(),
                cooked.at()));
      }
    } else if (entry instanceof SessionPlanned plan) {
      planned.put(plan.session(), plan);
    } else if (entry instanceof Scored score && score.attribute() == Attribute.BITTER) {
      tasted(score, recorded);
    }
  }

  /** The first tap counts, unless it is taken back within a minute. */
  private void tasted(Scored score, Recorded recorded) {
    Map<String, Recorded> cups =
        bitter.computeIfAbsent(score.session(), name -> new LinkedHashMap<>());
    if (Attribute.BITTER.stopsSample(score.value())) {
      cups.putIfAbsent(score.code(), recorded);
      return;
    }
    Recorded before = cups.get(score.code());
    if (before != null && !score.at().isAfter(before.entry().at().plus(MISTAKE))) {
      cups.remove(score.code());
    }
  }

  private void cup(Recorded recorded) {
    Scored score = (Scored) recorded.entry();
    SessionPlanned plan = planned.get(score.session());
    if (plan == null) {
      return;
    }
    Optional<Served> served =
        plans
            .computeIfAbsent(score.session(), name -> SessionPlan.draw(plan.request(), plan.seed()))
            .sheets()
            .stream()
            .flatMap(sheet -> sheet.cups().stream())
            .filter(cup -> cup.code().equals(score.code()))
            .map(Cup::sample)
            .findFirst()
            .flatMap(
                name -> plan.samples().stream().filter(s -> s.name().equals(name)).findFirst());
    served.ifPresent(
        sample ->
            add(
                new HarmFound(
                    Harm.BITTER,
                    sample.lot(),
                    null,
                    score.session(),
                    sample.name(),
                    recorded.id(),
                    score.at())));
  }

  private void add(HarmFound found) {
    byLot.computeIfAbsent(found.lot(), lot -> new ArrayList<>()).add(found);
  }
}
