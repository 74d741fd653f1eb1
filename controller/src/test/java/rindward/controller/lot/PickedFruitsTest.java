package rindward.controller.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import rindward.controller.Any;
import rindward.controller.Seeded;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Weighed;

/** A fruit is counted once, whatever it is called and by whom; and none that never came in. */
class PickedFruitsTest {
  private static final Instant HARVEST = Instant.parse("2026-09-20T08:00:00Z");

  private final List<Recorded> journal = new ArrayList<>();

  /** A crate whose truth is known: who cut which fruit on which day, and what they called it. */
  @Seeded(cases = 10_000)
  void neverMoreFruitsAreCounted_thanLeftTheCrate(Any any) {
    journal.clear();
    int crate = any.intBetween(1, 12);
    harvest(crate);
    Set<Integer> left = new HashSet<>();
    int days = any.intBetween(1, 6);
    for (int day = 1; day <= days; day++) {
      if (any.yesOrNo() || left.size() == crate) {
        aTaggedFruit(any, left, crate, day);
      } else {
        // One without a tag: eaten up by sunset.
        left.add(100 + day);
        for (int people = any.intBetween(1, 6); people > 0; people--) {
          taste(null, any.of(Seeds.values()), at(day, any.intBetween(11, 21)));
        }
      }
    }
    List<Fruit> cut = picked().all().stream().filter(Fruit::isCut).toList();
    assertThat(cut).as("%s", left).hasSizeLessThanOrEqualTo(left.size());
    assertThat(picked().all().size()).isLessThanOrEqualTo(crate);
    assertThat(cut.stream().mapToInt(fruit -> fruit.tastes().size() + fruit.cooked().size()).sum())
        .isEqualTo(said());
  }

  /** Somebody says which it is; what others say of it that day they say with or without its tag. */
  private void aTaggedFruit(Any any, Set<Integer> left, int crate, int day) {
    List<Integer> tagged = left.stream().filter(fruit -> fruit < 100).toList();
    int fruit =
        left.size() < crate || tagged.isEmpty()
            ? any.intBetween(1, crate)
            : tagged.get(any.intBetween(0, tagged.size() - 1));
    if (left.size() == crate && !left.contains(fruit)) {
      return;
    }
    left.add(fruit);
    for (int cooking = any.intBetween(0, 3); cooking > 0; cooking--) {
      // The same fruit goes into cups of several sessions.
      say(
          new SampleCooked(
              "session " + cooking,
              "a",
              "K4T",
              "" + fruit,
              null,
              CutFruit.of(any.of(Seeds.values())),
              null,
              "",
              at(day, any.intBetween(11, 21))));
    }
    taste("" + fruit, null, at(day, any.intBetween(11, 21)));
    for (int people = any.intBetween(0, 5); people > 0; people--) {
      taste(any.yesOrNo() ? null : "" + fruit, null, at(day, any.intBetween(11, 21)));
    }
  }

  /** Old journals, typing errors: more tags than there ever were fruits. */
  @Seeded(cases = 10_000)
  void whateverIsSaid_noMoreThanCameIn(Any any) {
    journal.clear();
    int crate = any.intBetween(1, 5);
    harvest(crate);
    for (int i = any.intBetween(0, 20); i > 0; i--) {
      Instant at = at(any.intBetween(0, 9), any.intBetween(9, 23));
      String tag = any.of("1", "2", "3", "A", "b", "cut at", "");
      switch (any.intBetween(0, 2)) {
        case 0 -> taste(any.yesOrNo() ? null : tag, any.of(Seeds.values()), at);
        case 1 -> say(new Weighed("K4T", tag, 1, 1000, 0, at));
        default ->
            say(
                new SampleCooked(
                    "s", "a", "K4T", tag, null, CutFruit.of(Seeds.FULL), null, "", at));
      }
    }
    assertThat(picked().all().size()).isLessThanOrEqualTo(crate);
    assertThat(lot().ripeness().stream().mapToInt(note -> note.fruits()).max().orElse(0))
        .isLessThanOrEqualTo(crate);
  }

  @Test
  void allThatWasSaidOfAFruit_hangsOnIt() {
    harvest(20);
    say(new Weighed("K4T", "7", 1, 1500, 0, at(5, 12)));
    taste("7", Seeds.FULL, at(30, 12));
    taste("8", null, at(30, 13));
    say(new Weighed("K4T", null, 19, 28_000, 0, at(40, 12)));

    Fruit fruit = picked().find("7").orElseThrow();
    assertThat(fruit.isNamed()).isTrue();
    assertThat(fruit.weighings()).hasSize(1);
    assertThat(fruit.tastes()).hasSize(1);
    assertThat(fruit.seeds()).contains(Seeds.FULL);
    assertThat(picked().named()).extracting(Fruit::name).containsExactlyInAnyOrder("7", "8");
    assertThat(picked().nextNumber()).isEqualTo("1");
  }

  @Test
  void fruitThatGetsItsNameAfterItWasFirstTasted_isTheSame() {
    harvest(20);
    taste(null, null, at(30, 12));
    taste("7", null, at(30, 13));
    assertThat(picked().all()).extracting(Fruit::name).containsExactly("7");
  }

  private long said() {
    return journal.stream().filter(r -> !(r.entry() instanceof Harvested)).count();
  }

  private PickedFruits picked() {
    return lot().picked();
  }

  private Lot lot() {
    return Lots.of(journal).find("K4T").orElseThrow();
  }

  private void harvest(int count) {
    say(new Harvested("K4T", "kabocha", "Winterglut", count, "porch", HARVEST, null, null, null));
  }

  private void taste(@Nullable String fruit, @Nullable Seeds seeds, Instant at) {
    say(new KitchenTasted("K4T", fruit, CutFruit.of(seeds), 8, null, List.of(), "", at));
  }

  private void say(Entry entry) {
    journal.add(new Recorded(journal.size() + 1L, entry.at(), "Wren", entry));
  }

  private static Instant at(int day, int hour) {
    return HARVEST.plus(Duration.ofDays(day)).plus(Duration.ofHours(hour - 8L));
  }
}
