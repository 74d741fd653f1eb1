package rindward.controller.variety;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rindward.controller.crop.Crop;
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
    return of(lots, closed, name -> Map.of());
  }

  /**
   * Learns from lots, and from what others have taught.
   *
   * @param closed what sessions that are over gave, by lot
   * @param taught by lots of a variety that are over, by their codes; of one that is among these,
   *     what it teaches now counts
   */
  public static Experience of(
      List<Grown> lots,
      Map<String, List<Tasted>> closed,
      Function<VarietyName, Map<String, LotLesson>> taught) {
    Map<VarietyName, List<Grown>> byName = new LinkedHashMap<>();
    lots.stream()
        .filter(grown -> !grown.lot().variety().isEmpty())
        .forEach(grown -> byName.computeIfAbsent(grown.name(), n -> new ArrayList<>()).add(grown));
    Map<VarietyName, OwnRecord> records = new HashMap<>();
    byName.forEach(
        (name, own) -> {
          Map<String, LotLesson> lessons = new HashMap<>(taught.apply(name));
          own.forEach(grown -> lessons.put(grown.lot().code(), LotLesson.of(grown, closed)));
          records.put(name, record(own.get(0).crop(), lessons.values()));
        });
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

  /** In one order, whichever lot was asked first: sums of doubles must come out the same. */
  private static OwnRecord record(Crop crop, Collection<LotLesson> lessons) {
    List<Fate> fates = lessons.stream().flatMap(lesson -> lesson.fates().stream()).toList();
    List<AgedTaste> tastes =
        lessons.stream()
            .flatMap(lesson -> lesson.tastes().stream())
            .sorted(
                Comparator.comparingInt(AgedTaste::day)
                    .thenComparing(AgedTaste::occasion)
                    .thenComparingDouble(AgedTaste::liking))
            .toList();
    return new OwnRecord(
        fates.isEmpty()
            ? Optional.empty()
            : Optional.of(OwnLife.of(Survival.of(fates), crop.keeping().life().value())),
        tastes.stream().map(AgedTaste::day).distinct().count() > 1
            ? new AgeCurve(tastes).window()
            : Optional.empty());
  }
}
