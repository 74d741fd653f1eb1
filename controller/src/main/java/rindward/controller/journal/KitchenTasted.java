package rindward.controller.journal;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.tasting.Use;

/**
 * Somebody cut a fruit in the kitchen and tasted it, knowing what it was.
 *
 * @param fruit tag of the fruit; null if it had none
 * @param liking on the nine-point scale; null if nobody said
 * @param moistness from dry to wet on its scale; null if nobody said
 * @param word in the taster's words; may be empty
 */
public record KitchenTasted(
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
