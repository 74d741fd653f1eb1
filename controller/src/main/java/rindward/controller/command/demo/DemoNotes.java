package rindward.controller.command.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Attested;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Decision;
import rindward.controller.journal.Entry;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RipenessSign;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Used;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.store.Database;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.tasting.Use;

/**
 * What the people of the demo's farm wrote down beside what the two rooms did: a lot picked unripe,
 * one that lay too cold in the barn, one that has kept for a year, one that is best in its third
 * week, last year's kabocha from week to week, and a tasting. All of it lies in places that the
 * simulated shed knows nothing of.
 */
public final class DemoNotes {
  private static final String BARN = "barn";
  private static final String PORCH = "porch";
  private static final Duration HOLD = Duration.ofMinutes(5);
  private static final int BARN_FROM = 22;
  private static final int BARN_TO = 39;

  /** Liking of last year's delicata at an age in days, every one a bite in the kitchen. */
  private static final int[][] LAST_YEARS_TASTES = {
    {5, 6}, {7, 6}, {9, 7}, {15, 8}, {18, 9}, {20, 9}, {22, 8}, {24, 8}, {33, 6}, {41, 6}, {52, 4},
    {60, 4}
  };

  /** The same of last year's hubbard, which was good only after months and has been so since. */
  private static final int[][] LAST_YEARS_HUBBARD = {
    {50, 5}, {55, 6}, {70, 5}, {140, 8}, {150, 8}, {165, 8}, {210, 8}, {230, 8}, {260, 8}, {290, 8},
    {310, 8}, {325, 8}
  };

  /** And of last year's kabocha, which grew sweet in store and was dull by the new year. */
  private static final int[][] LAST_YEARS_KABOCHA = {
    {12, 5}, {20, 6}, {28, 6}, {40, 7}, {48, 8}, {55, 8}, {62, 9}, {70, 8}, {78, 8}, {90, 7},
    {110, 6}, {130, 5}
  };

  private final Instant start;

  /** Something that was written down so many days after the first harvest. */
  public record Note(int day, Entry entry) {}

  /**
   * @param start of the demo's history
   */
  public DemoNotes(Instant start) {
    this.start = start;
  }

  /** Returns what was written down, in order. */
  public List<Note> all() {
    List<Note> notes = new ArrayList<>();
    keptAYear(notes);
    thirdWeek(notes);
    sweetInStore(notes);
    unripe(notes);
    chilled(notes);
    new DemoTasting(at(66)).entries().forEach(entry -> notes.add(new Note(66, entry)));
    notes.add(
        new Note(
            67,
            new VarietyDecided(
                "kabocha", "Winterglut", Decision.GROW_AGAIN, "best at the table", at(67))));
    notes.sort(Comparator.comparingInt(Note::day));
    return notes;
  }

  /** Writes down what a hand thermometer in the barn read while a lot lay there. */
  public void measureTheBarn(Database database) {
    SampleLog log = new SampleLog(database);
    for (Instant now = at(BARN_FROM); now.isBefore(at(BARN_TO)); now = now.plus(HOLD)) {
      log.sample(BARN, now.toEpochMilli(), 5_600, 78_000);
    }
    log.flush(at(BARN_TO).toEpochMilli());
  }

  private void keptAYear(List<Note> notes) {
    harvest(notes, "S8A", "hubbard", "Slate Barn", 14, "cellar", -330, 0);
    use(notes, "S8A", 5, -150);
    use(notes, "S8A", 5, -20);
    for (int[] taste : LAST_YEARS_HUBBARD) {
      notes.add(new Note(0, taste("S8A", null, taste[1], "", taste[0] - 330)));
    }
  }

  private void thirdWeek(List<Note> notes) {
    harvest(notes, "D8A", "delicata", "Striped Otter", 12, PORCH, -365, 0);
    for (int[] taste : LAST_YEARS_TASTES) {
      int day = taste[0] - 365;
      notes.add(new Note(0, taste("D8A", null, taste[1], "", day)));
    }
    use(notes, "D8A", 12, -300);
    harvest(notes, "D3C", "delicata", "Striped Otter", 16, PORCH, 50, 50);
  }

  private void sweetInStore(List<Note> notes) {
    harvest(notes, "K8A", "kabocha", "Winterglut", 12, "cellar", -365, 0);
    for (int[] taste : LAST_YEARS_KABOCHA) {
      notes.add(new Note(0, taste("K8A", null, taste[1], "", taste[0] - 365)));
    }
    use(notes, "K8A", 12, -200);
  }

  private void unripe(List<Note> notes) {
    harvest(notes, "L4A", "heirloom-maxima", "Long Lantern", 4, PORCH, 2, 2);
    notes.add(new Note(2, new RipenessNoted("L4A", RipenessSign.TAGGED_SET, 27, 27, 0, at(2))));
    notes.add(new Note(2, new RipenessNoted("L4A", RipenessSign.VINES_DEAD, 15, 80, 0, at(2))));
    notes.add(new Note(2, new FrostNoted("L4A", -1_500, 90, true, false, at(2))));
    notes.add(new Note(55, taste("L4A", Seeds.FLAT, 2, "thin and grassy", 55)));
  }

  private void chilled(List<Note> notes) {
    harvest(notes, "K5E", "kabocha", "Winterglut", 11, PORCH, 3, 3);
    notes.add(new Note(BARN_FROM, new Moved("K5E", BARN, at(BARN_FROM))));
    notes.add(new Note(BARN_TO, new Moved("K5E", PORCH, at(BARN_TO))));
  }

  private void harvest(
      List<Note> notes,
      String code,
      String crop,
      String variety,
      int count,
      String place,
      int day,
      int saidOn) {
    Grade grade = code.equals("L4A") ? Grade.DOUBTFUL : Grade.RIPE;
    notes.add(
        new Note(
            saidOn, new Harvested(code, crop, variety, count, place, at(day), grade, null, null)));
    notes.add(new Note(saidOn, new Attested(code, "stem dry, rind resists the nail", at(day))));
  }

  private void use(List<Note> notes, String code, int count, int day) {
    notes.add(new Note(0, new Used(code, count, Purpose.KITCHEN, at(day))));
  }

  private KitchenTasted taste(
      String code, @Nullable Seeds seeds, int liking, String word, int day) {
    return new KitchenTasted(
        code, null, CutFruit.of(seeds), liking, null, List.of(Use.ROASTING), word, at(day));
  }

  private Instant at(int day) {
    return start.plus(Duration.ofDays(day));
  }
}
