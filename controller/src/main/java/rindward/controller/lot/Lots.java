package rindward.controller.lot;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Entry;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.Planted;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.TakenBack;
import rindward.controller.journal.Tasting;
import rindward.controller.journal.Withdrawn;

/** All lots, as the journal tells them. A function of the entries and nothing else. */
public final class Lots {
  private final Map<String, Lot> byCode;
  private final Map<String, Planted> plans;
  private final Map<String, List<FieldDayNoted>> fieldDays;

  private Lots(
      Map<String, Lot> byCode,
      Map<String, Planted> plans,
      Map<String, List<FieldDayNoted>> fieldDays) {
    this.fieldDays = Collections.unmodifiableMap(fieldDays);
    this.byCode = Collections.unmodifiableMap(byCode);
    this.plans = Collections.unmodifiableMap(plans);
  }

  /** Tells the lots from the journal, in the order in which they were first mentioned. */
  public static Lots of(List<Recorded> journal) {
    Map<String, Long> versions = new HashMap<>();
    for (Recorded recorded : journal) {
      if (!(recorded.entry() instanceof Tasting)) {
        versions.put(recorded.entry().subject(), recorded.id());
      }
    }
    Map<String, List<Recorded>> bySubject = new LinkedHashMap<>();
    List<Recorded> standing = standing(journal);
    List<NewerEntry> newer = newer(standing);
    Map<String, List<HarmFound>> harms = HarmsFound.byLot(journal, standing);
    for (Recorded recorded : standing) {
      String lot = lot(recorded.entry());
      if (lot != null) {
        bySubject.computeIfAbsent(lot, code -> new ArrayList<>()).add(recorded);
      }
    }
    Map<String, Lot> lots = new LinkedHashMap<>();
    Map<String, Planted> plans = new LinkedHashMap<>();
    Map<String, List<FieldDayNoted>> fieldDays = new HashMap<>();
    bySubject.forEach(
        (code, about) -> {
          for (Recorded recorded : about) {
            if (recorded.entry() instanceof Planted plan) {
              plans.put(code, plan);
            } else if (recorded.entry() instanceof FieldDayNoted day) {
              fieldDays.computeIfAbsent(code, c -> new ArrayList<>()).add(day);
            }
          }
          LotStory.tell(
                  about,
                  harms.getOrDefault(code, List.of()),
                  newer,
                  versions.getOrDefault(code, 0L))
              .ifPresent(lot -> lots.put(code, lot));
        });
    Sisters.tell(lots);
    return new Lots(lots, plans, fieldDays);
  }

  private static List<NewerEntry> newer(List<Recorded> journal) {
    List<NewerEntry> newer = new ArrayList<>(0);
    for (Recorded recorded : journal) {
      if (recorded.entry() instanceof NewerEntry unread) {
        newer.add(unread);
      }
    }
    return newer;
  }

  /** Returns the lot that an entry tells something of. */
  private static @Nullable String lot(Entry entry) {
    if (entry instanceof OfLot ofLot) {
      return ofLot.lot();
    }
    return entry instanceof SampleCooked cooked ? cooked.lot() : null;
  }

  /** Returns the lots in the order in which they came in. */
  public Collection<Lot> all() {
    return byCode.values();
  }

  /** Returns the lot with that code. */
  public Optional<Lot> find(String code) {
    return Optional.ofNullable(byCode.get(code));
  }

  /** Returns the plot plan, by the code of the lot that is to come of it; harvested or not. */
  public Map<String, Planted> plans() {
    return plans;
  }

  /** Returns what stands of the days in the field of one plan or lot. */
  public List<FieldDayNoted> fieldDays(String code) {
    return fieldDays.getOrDefault(code, List.of());
  }

  /** Returns every code that is taken, by a lot or by a plan. */
  public Set<String> codes() {
    Set<String> codes = new LinkedHashSet<>(plans.keySet());
    codes.addAll(byCode.keySet());
    return codes;
  }

  /**
   * Returns the journal with every correction in the place of what it corrects and without what was
   * withdrawn, in the order of the journal.
   */
  public static List<Recorded> standing(List<Recorded> journal) {
    Set<Long> named = named(journal);
    if (named.isEmpty()) {
      return journal;
    }
    Map<Long, Integer> places = new HashMap<>();
    List<@Nullable Recorded> standing = new ArrayList<>();
    for (Recorded recorded : journal) {
      if (recorded.entry() instanceof Corrected corrected) {
        Integer place = places.get(corrected.entry());
        Recorded before = place == null ? null : standing.get(place);
        if (place != null && before != null) {
          standing.set(
              place,
              new Recorded(before.id(), before.recordedAt(), before.by(), corrected.instead()));
          places.put(recorded.id(), place);
        }
      } else if (recorded.entry() instanceof Withdrawn withdrawn) {
        remove(withdrawn.entry(), places, standing);
      } else if (recorded.entry() instanceof TakenBack back) {
        remove(back.entry(), places, standing);
      } else {
        if (named.contains(recorded.id()) && !(recorded.entry() instanceof NewerEntry)) {
          places.put(recorded.id(), standing.size());
        }
        standing.add(recorded);
      }
    }
    return standing.stream().filter(Objects::nonNull).toList();
  }

  /** Returns the entries that a later one corrects or takes back: few of many. */
  private static Set<Long> named(List<Recorded> journal) {
    Set<Long> named = new HashSet<>();
    for (Recorded recorded : journal) {
      if (recorded.entry() instanceof Corrected corrected) {
        named.add(corrected.entry());
      } else if (recorded.entry() instanceof Withdrawn withdrawn) {
        named.add(withdrawn.entry());
      } else if (recorded.entry() instanceof TakenBack back) {
        named.add(back.entry());
      }
    }
    return named;
  }

  private static void remove(
      long entry, Map<Long, Integer> places, List<@Nullable Recorded> standing) {
    Integer place = places.get(entry);
    if (place != null) {
      standing.set(place, null);
    }
  }
}
