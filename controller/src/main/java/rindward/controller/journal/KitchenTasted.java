package rindward.controller.journal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.tasting.Attribute;
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
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<KitchenTasted> KIND =
      EntryKind.of(
              "kitchen-taste",
              KitchenTasted.class,
              Field.lot(),
              Field.text("fruit").orNothing(),
              Field.of("cut", CutFruit.PARTS),
              Field.whole("liking").orNothing().checked(Attribute.LIKING::refusal),
              Field.whole("moistness").orNothing().checked(Attribute.MOISTNESS::refusal),
              Field.words("goodFor", Use.class).column("good_for"),
              Field.text("word").column("note"),
              Field.at())
          .where(KitchenTasted::saysNothing);

  private static Optional<String> saysNothing(KitchenTasted taste) {
    boolean isEmpty =
        taste.liking == null
            && taste.moistness == null
            && taste.goodFor.isEmpty()
            && taste.word.isBlank()
            && taste.cut.equals(CutFruit.of(null));
    return isEmpty
        ? Optional.of("the taste was empty but it must say something: liking, seeds, or a word")
        : Optional.empty();
  }
}
