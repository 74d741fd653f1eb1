package rindward.controller.lot;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Weighed;

/**
 * The fruits that somebody picked out of one lot: which of all that was said is of the same fruit.
 * A name is a fruit's for good. What was tasted without a name is of the fruit that was cut last,
 * within a day; where none with a name was, the tastes of one day are of one fruit. There are never
 * more than came in: what is told beyond that is taken for the last of them.
 */
public final class PickedFruits {
  /** So long after a fruit was cut, a taste of no named fruit is of the same. Common practice. */
  private static final Duration ONE_DAY = Duration.ofHours(16);

  /** When a fruit with a name was cut. */
  private record Cut(Instant at, String name) {}

  private final int cameIn;
  private final Map<String, Fruit> fruits = new LinkedHashMap<>();
  private final Map<String, String> standsFor = new HashMap<>();
  private final Map<KitchenTasted, String> unnamed = new HashMap<>();

  /**
   * Tells the fruits of one lot.
   *
   * @param cameIn how many fruits came in
   * @param weighings in the order in which it happened, as are the others
   */
  PickedFruits(
      int cameIn,
      List<Weighed> weighings,
      List<KitchenTasted> tastes,
      List<SampleCooked> cooked,
      List<HarmFound> harms) {
    this.cameIn = cameIn;
    Set<String> names = names(weighings, tastes, cooked);
    names.forEach(name -> standsFor.put(name, keep(name)));
    List<Cut> cuts = cuts(tastes, cooked);
    Opened open = null;
    for (KitchenTasted taste : tastes) {
      if (taste.fruit() == null) {
        String last = cutLast(taste.at(), cuts);
        if (last == null) {
          open = open != null && taste.at().isBefore(open.until()) ? open : open(taste.at(), cuts);
          last = open.name();
        }
        unnamed.put(taste, keep(last));
      }
    }
    fruits.replaceAll(
        (name, empty) ->
            new Fruit(
                name,
                names.contains(name),
                of(weighings, weighed -> named(weighed.fruit()), name),
                of(tastes, this::nameOf, name),
                of(cooked, fruit -> named(fruit.fruit()), name),
                of(harms, harm -> named(harm.fruit()), name)));
  }

  /** Tastes without a name that are of one fruit. */
  private record Opened(String name, Instant until) {}

  private static @Nullable String cutLast(Instant at, List<Cut> cuts) {
    String last = null;
    for (Cut cut : cuts) {
      if (!cut.at().isAfter(at) && at.isBefore(cut.at().plus(ONE_DAY))) {
        last = cut.name();
      }
    }
    return last;
  }

  /** The first taste of a day; a fruit that gets its name a little later is the same. */
  private static Opened open(Instant at, List<Cut> cuts) {
    Instant until = at.plus(ONE_DAY);
    String name =
        cuts.stream()
            .filter(cut -> cut.at().isAfter(at) && cut.at().isBefore(until))
            .findFirst()
            .map(Cut::name)
            .orElse("cut at " + at);
    return new Opened(name, until);
  }

  private static Set<String> names(
      List<Weighed> weighings, List<KitchenTasted> tastes, List<SampleCooked> cooked) {
    Set<String> names = new LinkedHashSet<>();
    tastes.forEach(taste -> Optional.ofNullable(taste.fruit()).ifPresent(names::add));
    cooked.forEach(fruit -> names.add(fruit.fruit()));
    weighings.forEach(weighed -> Optional.ofNullable(weighed.fruit()).ifPresent(names::add));
    return names;
  }

  private static List<Cut> cuts(List<KitchenTasted> tastes, List<SampleCooked> cooked) {
    return Stream.concat(
            tastes.stream()
                .flatMap(
                    taste ->
                        Stream.ofNullable(taste.fruit()).map(name -> new Cut(taste.at(), name))),
            cooked.stream().map(fruit -> new Cut(fruit.at(), fruit.fruit())))
        .sorted(Comparator.comparing(Cut::at))
        .toList();
  }

  /** Returns the name under which a fruit is counted. */
  private String keep(String name) {
    if (standsFor.containsKey(name)) {
      return Objects.requireNonNull(standsFor.get(name));
    }
    if (!fruits.containsKey(name) && fruits.size() >= cameIn) {
      return fruits.keySet().stream().reduce((first, later) -> later).orElse(name);
    }
    fruits.putIfAbsent(name, new Fruit(name, false, List.of(), List.of(), List.of(), List.of()));
    return name;
  }

  private static <T> List<T> of(List<T> said, Function<T, @Nullable String> nameOf, String name) {
    List<T> own = new ArrayList<>();
    for (T each : said) {
      if (name.equals(nameOf.apply(each))) {
        own.add(each);
      }
    }
    return own;
  }

  private @Nullable String named(@Nullable String fruit) {
    return fruit == null ? null : standsFor.get(fruit);
  }

  /** Returns every fruit that was picked out; those with a name first. */
  public Collection<Fruit> all() {
    return Collections.unmodifiableCollection(fruits.values());
  }

  /** Returns those that have a name. */
  public List<Fruit> named() {
    return fruits.values().stream().filter(Fruit::isNamed).toList();
  }

  /** Returns the fruit of that name. */
  public Optional<Fruit> find(String name) {
    return Optional.ofNullable(fruits.get(name));
  }

  /** Returns the name of the fruit that was tasted: the same for all tastes of it, for good. */
  public String nameOf(KitchenTasted taste) {
    String name = taste.fruit() == null ? unnamed.get(taste) : standsFor.get(taste.fruit());
    return Objects.requireNonNull(name, "a taste of another lot");
  }

  /** Returns the name under which a fruit with a name is counted, as its session has it. */
  public String nameOf(String fruit) {
    return standsFor.getOrDefault(fruit, fruit);
  }

  /** Returns the number that the next fruit gets when it is picked out. */
  public String nextNumber() {
    int number = 1;
    while (standsFor.containsKey(String.valueOf(number))) {
      number++;
    }
    return String.valueOf(number);
  }

  /** Of the same words the same fruits come: whoever compares two lots compares what was said. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PickedFruits picked
        && cameIn == picked.cameIn
        && fruits.equals(picked.fruits)
        && standsFor.equals(picked.standsFor)
        && unnamed.equals(picked.unnamed);
  }

  @Override
  public int hashCode() {
    return Objects.hash(cameIn, fruits, standsFor, unnamed);
  }
}
