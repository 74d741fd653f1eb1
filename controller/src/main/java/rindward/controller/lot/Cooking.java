package rindward.controller.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Served;
import rindward.controller.journal.Used;

/**
 * What is said by cooking a fruit for a session: how it was, and that it has left its lot. A fruit
 * leaves it once, however many sessions it is served in.
 */
public final class Cooking {
  private final Lots lots;
  private final Set<List<String>> gone = new HashSet<>();

  public Cooking(Lots lots) {
    this.lots = lots;
  }

  /** Returns what is said by cooking one fruit. */
  public List<Entry> of(SampleCooked cooked) {
    Optional<Lot> lot = lots.find(cooked.lot());
    boolean hasLeft =
        lot.flatMap(l -> l.picked().find(cooked.fruit()))
            .filter(fruit -> !fruit.cooked().isEmpty())
            .isPresent();
    return !gone.add(List.of(cooked.lot(), cooked.fruit())) || hasLeft
        ? List.of(cooked)
        : List.of(cooked, new Used(cooked.lot(), 1, Purpose.PANEL, cooked.at()));
  }

  /** A fruit that the books have as gone already leaves no second time. */
  private boolean isThere(Entry entry, List<Entry> before) {
    long taken = before.stream().filter(each -> isUseOf(entry.subject(), each)).count();
    return !(entry instanceof Used)
        || lots.find(entry.subject())
            .filter(lot -> lot.fruits().freeFor(Purpose.PANEL) > taken)
            .isPresent();
  }

  private static boolean isUseOf(String lot, Entry entry) {
    return entry instanceof Used && entry.subject().equals(lot);
  }

  /** Returns what is said by taking what was planned for every sample of which nothing is noted. */
  public List<Entry> asPlanned(Session session, Instant at) {
    List<Entry> entries = new ArrayList<>();
    for (Served sample : session.fruitsOpen()) {
      for (String fruit : sample.fruits()) {
        SampleCooked cooked =
            new SampleCooked(
                session.name(),
                sample.name(),
                sample.lot(),
                fruit,
                null,
                CutFruit.of(null),
                null,
                "",
                at);
        of(cooked).stream().filter(entry -> isThere(entry, entries)).forEach(entries::add);
      }
    }
    return entries;
  }
}
