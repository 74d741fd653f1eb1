package rindward.controller.variety;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rindward.controller.journal.KitchenTasted;

/** Which tastes of one lot say nothing of its variety, and why: what all that counts asks first. */
public final class TasteApart {
  private final Grown grown;
  private final UnripeFruits unripe;

  public TasteApart(Grown grown) {
    this.grown = grown;
    this.unripe = UnripeFruits.of(grown.lot());
  }

  /** Returns why a taste in the kitchen counts for nothing, by itself; empty if it may count. */
  Optional<String> alone(KitchenTasted taste) {
    if (taste.liking() == null) {
      return Optional.of("nobody said how it is liked");
    }
    if (!grown.isCuredBy(taste.at())) {
      return Optional.of(SetApart.UNCURED.words());
    }
    return unripe.isOf(taste) ? Optional.of("that fruit was not ripe") : Optional.empty();
  }

  /** Returns why what a session gave counts for nothing, by itself; empty if it may count. */
  Optional<String> alone(Tasted tasted) {
    if (tasted.fruits().isEmpty()) {
      return Optional.of("nobody said which fruits were cooked for it");
    }
    if (!grown.isCuredBy(tasted.at())) {
      return Optional.of(SetApart.UNCURED.words());
    }
    return unripe.isIn(tasted) ? Optional.of("a fruit in its cups was not ripe") : Optional.empty();
  }

  /** Returns why a taste in the kitchen counts for nothing, its lot's reasons included. */
  public Optional<String> why(KitchenTasted taste) {
    return alone(taste).or(this::whole);
  }

  /** Returns why what a session gave counts for nothing, its lot's reasons included. */
  public Optional<String> why(Tasted tasted) {
    return alone(tasted).or(this::whole);
  }

  private Optional<String> whole() {
    List<SetApart> apart = SetApart.of(grown);
    return apart.isEmpty()
        ? Optional.empty()
        : Optional.of(apart.stream().map(SetApart::words).collect(Collectors.joining(", ")));
  }
}
