package rindward.controller.variety;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rindward.controller.keeping.Fate;
import rindward.controller.keeping.Survival;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.readiness.OwnLife;
import rindward.controller.readiness.OwnRecord;
import rindward.controller.readiness.Readiness;
import rindward.controller.tasting.analysis.AgeCurve;
import rindward.controller.tasting.analysis.AgedTaste;

/**
 * What the grower's own fruits of each variety, over all years, teach about the next one: how long
 * they keep, and at what age they are liked best. A lot that is set apart teaches nothing of taste;
 * one that was unripe or hurt by cold teaches nothing of keeping either.
 */
public final class Experience {
  private final Map<VarietyName, OwnRecord> records;

  private Experience(Map<VarietyName, OwnRecord> records) {
    this.records = records;
  }

  /**
   * Learns from all lots.
   *
   * @param closed what sessions that are over gave, by lot
   */
  public static Experience of(List<Grown> lots, Map<String, List<Tasted>> closed) {
    Map<VarietyName, List<Grown>> byName = new LinkedHashMap<>();
    lots.stream()
        .filter(grown -> !grown.lot().variety().isEmpty())
        .forEach(grown -> byName.computeIfAbsent(grown.name(), n -> new ArrayList<>()).add(grown));
    Map<VarietyName, OwnRecord> records = new HashMap<>();
    byName.forEach((name, own) -> records.put(name, record(own, closed)));
    return new Experience(records);
  }

  /** Returns what a variety has shown; nothing if it has no name or never came in. */
  public OwnRecord of(VarietyName name) {
    return records.getOrDefault(name, OwnRecord.NONE);
  }

  /** Returns a lot with its verdict, by the guide and by all this. */
  public Offer judge(Grown grown, Instant now) {
    return new Offer(
        grown.lot(),
        grown.crop(),
        grown.lived(),
        Readiness.of(grown.lot(), grown.crop(), grown.lived(), of(grown.name()), now));
  }

  private static OwnRecord record(List<Grown> lots, Map<String, List<Tasted>> closed) {
    List<Fate> fates = new ArrayList<>();
    List<Grown> fit = new ArrayList<>();
    for (Grown grown : lots) {
      List<SetApart> apart = SetApart.of(grown);
      if (SetApart.keepAsTheyShould(apart)) {
        fates.addAll(Fates.byLife(grown));
      }
      if (apart.isEmpty()) {
        fit.add(grown);
      }
    }
    List<AgedTaste> tastes = Eating.aged(fit, closed);
    return new OwnRecord(
        fates.isEmpty()
            ? Optional.empty()
            : Optional.of(
                OwnLife.of(Survival.of(fates), lots.get(0).crop().keeping().life().value())),
        tastes.stream().map(AgedTaste::day).distinct().count() > 1
            ? new AgeCurve(tastes).window()
            : Optional.empty());
  }
}
