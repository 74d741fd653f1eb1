package rindward.controller.lot;

import java.time.Instant;

/**
 * One thing that was said, once, and is never changed: what follows from it may be changed by a
 * later {@link Corrected}. Whatever a person says, from a page, a command, an import or a message,
 * is one of these.
 */
public sealed interface Entry {

  /**
   * What the entry is about: a lot's code, or a room's name. Two people who speak of the same
   * subject at the same time must not overwrite each other.
   */
  String subject();

  /** Returns when it happened, which may be long before it was said. */
  Instant at();

  /**
   * A lot came in.
   *
   * @param lot its code
   * @param crop key of its type in the crop guide
   * @param variety the grower's name for the variety; may be empty
   * @param count fruits, bulbs or roots, at least one
   * @param place where it went first
   * @param at when it was harvested
   */
  record Harvested(String lot, String crop, String variety, int count, String place, Instant at)
      implements Entry {
    @Override
    public String subject() {
      return lot;
    }
  }

  /** A lot went to another place. */
  record Moved(String lot, String place, Instant at) implements Entry {
    @Override
    public String subject() {
      return lot;
    }
  }

  /**
   * The probes of a room have this accuracy from now on. It is in the journal because a change of
   * the settings must not rewrite what was certain last month.
   *
   * @param temperatureMilliC plus or minus, thousandths of a degree C
   * @param humidityMilliPct plus or minus, thousandths of a percent
   */
  record AccuracyStated(String room, int temperatureMilliC, int humidityMilliPct, Instant at)
      implements Entry {
    @Override
    public String subject() {
      return room;
    }
  }

  /**
   * An earlier entry was wrong; this is what it should have said. The earlier one stays in the
   * journal.
   *
   * @param entry id of the entry that was wrong
   * @param instead of the same kind and subject
   */
  record Corrected(long entry, Entry instead) implements Entry {
    @Override
    public String subject() {
      return instead.subject();
    }

    @Override
    public Instant at() {
      return instead.at();
    }
  }
}
