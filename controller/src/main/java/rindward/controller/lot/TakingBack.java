package rindward.controller.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.TakenBack;
import rindward.controller.journal.Tasting;
import rindward.controller.journal.Used;
import rindward.controller.journal.Withdrawn;

/**
 * What takes back things that were said of a tasting. A fruit that was noted as cooked left its lot
 * by the same word; taken back, it lies there again.
 */
public final class TakingBack {
  private final List<Recorded> standing;

  /**
   * @param journal everything said so far
   */
  public TakingBack(List<Recorded> journal) {
    this.standing = Lots.standing(journal);
  }

  /** Returns what was said last of a session, in one breath; nothing if nothing stands. */
  public List<Recorded> lastOf(String session) {
    List<Recorded> about =
        standing.stream()
            .filter(r -> r.entry() instanceof Tasting tasting && tasting.session().equals(session))
            .toList();
    if (about.isEmpty()) {
      return about;
    }
    Recorded last = about.get(about.size() - 1);
    return about.stream().filter(r -> isOneBreath(r, last)).toList();
  }

  /** Returns the note that a fruit was cooked for a sample; nothing if there is none. */
  public List<Recorded> cooked(String session, String sample, String fruit) {
    return standing.stream()
        .filter(
            r ->
                r.entry() instanceof SampleCooked cooked
                    && cooked.session().equals(session)
                    && cooked.sample().equals(sample)
                    && cooked.fruit().equals(fruit))
        .toList();
  }

  /** Returns the entries that take these back, the last said first. */
  public List<Entry> entries(List<Recorded> said, Instant at) {
    List<Entry> back = new ArrayList<>();
    for (Recorded each : said) {
      if (each.entry() instanceof Tasting tasting) {
        leaving(each)
            .ifPresent(left -> back.add(new Withdrawn(left.entry().subject(), left.id(), at)));
        back.add(new TakenBack(tasting.session(), each.id(), at));
      }
    }
    Collections.reverse(back);
    return List.copyOf(back);
  }

  /** Returns by what a cooked fruit left its lot; it is said right behind. */
  private Optional<Recorded> leaving(Recorded said) {
    return standing.stream()
        .filter(
            r ->
                said.entry() instanceof SampleCooked cooked
                    && r.entry() instanceof Used used
                    && used.lot().equals(cooked.lot())
                    && used.purpose() == Purpose.PANEL
                    && isOneBreath(r, said)
                    && r.id() > said.id())
        .findFirst();
  }

  private static boolean isOneBreath(Recorded one, Recorded other) {
    return one.recordedAt().equals(other.recordedAt()) && one.by().equals(other.by());
  }
}
