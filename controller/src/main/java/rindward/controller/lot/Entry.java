package rindward.controller.lot;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.tasting.Use;

/**
 * One thing that was said, once, and is never changed: what follows from it may be changed by a
 * later {@link Corrected} or {@link Withdrawn}. Whatever a person says, from a page, a command, an
 * import or a message, is one of these. Weights are in grams.
 */
public sealed interface Entry
    permits Entry.OfLot,
        Entry.AccuracyStated,
        Entry.Corrected,
        Tasting,
        VarietyDecided,
        OutputTried,
        RoomAsked,
        AlarmAnswered,
        WorkAnnounced,
        ProbeCalibrated {

  /**
   * What the entry is about, such as a lot's code or a room's name. Two people who speak of the
   * same subject at the same time must not overwrite each other.
   */
  String subject();

  /** Returns when it happened, which may be long before it was said. */
  Instant at();

  /** Hands the entry to the method of the visitor that stands for its kind. */
  <R> R accept(EntryVisitor<R> visitor);

  /** Something said of one lot. */
  sealed interface OfLot extends Entry {
    String lot();

    @Override
    default String subject() {
      return lot();
    }
  }

  /**
   * A plot was planned, and its lot has a code and a label before there is a fruit.
   *
   * @param check whether it is the variety the others are compared with
   * @param plants how many, at least one
   * @param expectedDays from transplanting (or sowing) to harvest, as the seed packet says
   */
  record Planted(
      String lot,
      String plot,
      String crop,
      String variety,
      boolean check,
      int plants,
      @Nullable LocalDate sown,
      @Nullable LocalDate transplanted,
      @Nullable Integer expectedDays,
      Instant at)
      implements OfLot {
    /** Returns the same plan for a lot of another code. */
    public Planted withLot(String code) {
      return new Planted(
          code, plot, crop, variety, check, plants, sown, transplanted, expectedDays, at);
    }

    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.planted(this);
    }
  }

  /**
   * A lot came in.
   *
   * @param crop key of its type in the crop guide
   * @param variety the grower's name for the variety; may be empty
   * @param count fruits, bulbs or roots, at least one
   * @param place where it went first
   * @param at when it was harvested
   * @param grade how ripe it looked; null if nobody said
   * @param weightGrams of all of it; null if not weighed
   * @param plot where it grew; null if nobody said
   */
  record Harvested(
      String lot,
      String crop,
      String variety,
      int count,
      String place,
      Instant at,
      @Nullable Grade grade,
      @Nullable Integer weightGrams,
      @Nullable String plot)
      implements OfLot {

    /** A lot of which no more was said. */
    public Harvested(String lot, String crop, String variety, int count, String place, Instant at) {
      this(lot, crop, variety, count, place, at, null, null, null);
    }

    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.harvested(this);
    }
  }

  /** A lot went to another place. */
  record Moved(String lot, String place, Instant at) implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.moved(this);
    }
  }

  /**
   * Fruits were put on a scale.
   *
   * @param fruit tag of one sample fruit; null for crates of the lot
   * @param count fruits on the scale
   * @param grossGrams with crates
   * @param tareGrams the crates alone; 0 without
   */
  record Weighed(
      String lot, @Nullable String fruit, int count, int grossGrams, int tareGrams, Instant at)
      implements OfLot {
    /** Returns the weight of the fruits alone. */
    public int netGrams() {
      return grossGrams - tareGrams;
    }

    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.weighed(this);
    }
  }

  /** Fruits were lost. The note may be empty. */
  record Culled(String lot, int count, Cause cause, String note, Instant at) implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.culled(this);
    }
  }

  /** Sound fruits were used; those set aside for the purpose go first. */
  record Used(String lot, int count, Purpose purpose, Instant at) implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.used(this);
    }
  }

  /** Somebody counted: so many sound fruits are there, whatever the books say. */
  record Recounted(String lot, int count, Instant at) implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.recounted(this);
    }
  }

  /** So many fruits are set aside for a purpose; replaces what was set aside for it before. */
  record Reserved(String lot, Purpose purpose, int count, Instant at) implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.reserved(this);
    }
  }

  /**
   * Evidence of how ripe fruits were when they were picked.
   *
   * @param lowDays least days after fruit set at picking
   * @param highDays most days after fruit set at picking
   * @param fruits in how many fruits it was seen; 0 if it holds for the whole lot
   */
  record RipenessNoted(
      String lot, RipenessSign sign, int lowDays, int highDays, int fruits, Instant at)
      implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.ripenessNoted(this);
    }
  }

  /**
   * Frost touched the fruits, before harvest or since.
   *
   * @param minimumMilliC lowest air temperature in thousandths of a degree C
   * @param minutes how long it froze
   * @param covered whether leaves or a cloth lay over the fruits
   * @param waterSoaked whether the rind looked water-soaked afterwards
   */
  record FrostNoted(
      String lot, int minimumMilliC, int minutes, boolean covered, boolean waterSoaked, Instant at)
      implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.frostNoted(this);
    }
  }

  /**
   * Somebody cut a fruit in the kitchen and tasted it, knowing what it was.
   *
   * @param fruit tag of the fruit; null if it had none
   * @param liking on the nine-point scale; null if nobody said
   * @param moistness from dry to wet on its scale; null if nobody said
   * @param word in the taster's words; may be empty
   */
  record KitchenTasted(
      String lot,
      @Nullable String fruit,
      CutFruit cut,
      @Nullable Integer liking,
      @Nullable Integer moistness,
      List<Use> goodFor,
      String word,
      Instant at)
      implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.kitchenTasted(this);
    }
  }

  /**
   * A day in the field was written down, as early as on the plan: what tells the age of a fruit.
   *
   * @param what happened
   * @param day on which it happened
   * @param fruits on how many fruits the tag hangs; 0 if it holds for the whole lot
   */
  record FieldDayNoted(String lot, FieldDay what, LocalDate day, int fruits, Instant at)
      implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.fieldDayNoted(this);
    }
  }

  /** The fruits are not what their label says: seed that was crossed, or mixed up. */
  record OffTypeNoted(String lot, String text, Instant at) implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.offTypeNoted(this);
    }
  }

  /** Anything worth remembering. */
  record Noted(String lot, String text, Instant at) implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.noted(this);
    }
  }

  /** Somebody saw that the lot has cured, and says how. Told, never counted as measured. */
  record Attested(String lot, String text, Instant at) implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.attested(this);
    }
  }

  /** The lot does not suit the place, and is meant to be there all the same. */
  record MisfitAccepted(String lot, String place, Instant at) implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.misfitAccepted(this);
    }
  }

  /** The entry of this id should never have been said of the lot; it stays in the journal. */
  record Withdrawn(String lot, long entry, Instant at) implements OfLot {
    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.withdrawn(this);
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

    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.accuracyStated(this);
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

    @Override
    public <R> R accept(EntryVisitor<R> visitor) {
      return visitor.corrected(this);
    }
  }
}
