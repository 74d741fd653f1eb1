package rindward.dashboard.tastings;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What lies before one taster: codes, and nothing of what is in a cup.
 *
 * @param open whether it may still be scored
 * @param cautions to be read before the first cup
 * @param warmUp what is tasted first, openly and unscored
 * @param uses what a cup may be good for
 * @param cups in the order in which they are served
 */
public record SheetView(
    String tasting,
    String taster,
    boolean open,
    List<String> cautions,
    @Nullable String warmUp,
    List<AskedView> questions,
    List<UseView> uses,
    List<CupView> cups) {
  public SheetView {
    cautions = List.copyOf(cautions);
    questions = List.copyOf(questions);
    uses = List.copyOf(uses);
    cups = List.copyOf(cups);
  }

  /**
   * One question.
   *
   * @param lowest the score of the first of its words; each next one is one more
   * @param stops whether the highest answer ends the tasting of the cup
   */
  public record AskedView(
      String key, String question, int lowest, List<String> words, boolean stops) {
    public AskedView {
      words = List.copyOf(words);
    }
  }

  /** One use, by the word that is sent and the words that are read. */
  public record UseView(String key, String words) {}

  /**
   * One cup.
   *
   * @param go which go it belongs to, from 1
   * @param stopped whether somebody found this food bitter: it is not tasted any more
   * @param answers what this taster said, by question
   */
  public record CupView(
      String code, int go, boolean stopped, Map<String, Integer> answers, List<String> goodFor) {
    public CupView {
      answers = Map.copyOf(answers);
      goodFor = List.copyOf(goodFor);
    }
  }
}
