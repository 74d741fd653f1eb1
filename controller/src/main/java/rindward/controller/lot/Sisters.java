package rindward.controller.lot;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Which lots are suspect because of what was found in another: those of the same variety in the
 * same year, which grew from the same seed as far as anybody knows, and those of the same plot in
 * that year.
 */
final class Sisters {
  private Sisters() {}

  /** Tells each lot what was found in its sisters. */
  static void tell(Map<String, Lot> lots) {
    List<Lot> harmed = lots.values().stream().filter(lot -> !lot.harms().isEmpty()).toList();
    if (!harmed.isEmpty()) {
      lots.replaceAll((code, lot) -> beside(lot, harmed));
    }
  }

  private static Lot beside(Lot lot, Collection<Lot> harmed) {
    List<HarmFound> found = new ArrayList<>();
    for (Lot other : harmed) {
      if (!other.code().equals(lot.code()) && areSisters(lot, other)) {
        found.addAll(other.harms());
      }
    }
    return found.isEmpty() ? lot : lot.beside(found);
  }

  private static boolean areSisters(Lot lot, Lot other) {
    return year(lot) == year(other)
        && (lot.crop().equals(other.crop())
                && !lot.variety().isEmpty()
                && same(lot.variety(), other.variety())
            || lot.harvest().plot() != null
                && other.harvest().plot() != null
                && same(
                    String.valueOf(lot.harvest().plot()), String.valueOf(other.harvest().plot())));
  }

  private static boolean same(String one, String other) {
    return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
  }

  private static int year(Lot lot) {
    return lot.harvestedAt().atZone(ZoneOffset.UTC).getYear();
  }
}
