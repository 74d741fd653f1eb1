package rindward.controller.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rindward.controller.lot.Entry.Corrected;
import rindward.controller.lot.Entry.Harvested;
import rindward.controller.lot.Entry.Moved;

/** All lots, as the journal tells them. A function of the entries and nothing else. */
public final class Lots {
  private final Map<String, Lot> byCode;

  private Lots(Map<String, Lot> byCode) {
    this.byCode = Collections.unmodifiableMap(byCode);
  }

  /** Tells the lots from the journal, in the order in which they were first mentioned. */
  public static Lots of(List<Recorded> journal) {
    List<Recorded> standing = standing(journal);
    Map<String, Lot> lots = new LinkedHashMap<>();
    for (Recorded recorded : standing) {
      if (recorded.entry() instanceof Harvested harvested) {
        lots.put(harvested.lot(), tell(harvested, standing, journal));
      }
    }
    return new Lots(lots);
  }

  /** Returns the lots in the order in which they came in. */
  public Collection<Lot> all() {
    return byCode.values();
  }

  /** Returns the lot with that code. */
  public Optional<Lot> find(String code) {
    return Optional.ofNullable(byCode.get(code));
  }

  /**
   * Returns the journal with every correction in the place of what it corrects, in the order of the
   * journal.
   */
  public static List<Recorded> standing(List<Recorded> journal) {
    Map<Long, Integer> places = new HashMap<>();
    List<Recorded> standing = new ArrayList<>();
    for (Recorded recorded : journal) {
      if (recorded.entry() instanceof Corrected corrected) {
        Integer place = places.get(corrected.entry());
        if (place != null) {
          Recorded before = standing.get(place);
          standing.set(
              place,
              new Recorded(before.id(), before.recordedAt(), before.by(), corrected.instead()));
          places.put(recorded.id(), place);
        }
      } else {
        places.put(recorded.id(), standing.size());
        standing.add(recorded);
      }
    }
    return standing;
  }

  private static Lot tell(Harvested harvested, List<Recorded> standing, List<Recorded> journal) {
    String code = harvested.lot();
    List<Moved> moves =
        standing.stream()
            .map(Recorded::entry)
            .filter(e -> e instanceof Moved && e.subject().equals(code))
            .map(Moved.class::cast)
            .filter(m -> m.at().isAfter(harvested.at()))
            .sorted(Comparator.comparing(Moved::at))
            .toList();
    List<Stay> stays = new ArrayList<>();
    String place = harvested.place();
    Instant since = harvested.at();
    for (Moved move : moves) {
      if (!move.at().equals(since)) {
        stays.add(new Stay(place, since, move.at()));
      }
      place = move.place();
      since = move.at();
    }
    stays.add(new Stay(place, since, Instant.MAX));
    long version =
        journal.stream()
            .filter(r -> r.entry().subject().equals(code))
            .mapToLong(Recorded::id)
            .max()
            .orElseThrow();
    return new Lot(
        code,
        harvested.crop(),
        harvested.variety(),
        harvested.count(),
        harvested.at(),
        stays,
        version);
  }
}
