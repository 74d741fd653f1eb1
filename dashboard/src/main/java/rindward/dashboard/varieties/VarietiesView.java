package rindward.dashboard.varieties;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every variety that came in, type by type.
 *
 * @param zone the farm's time zone
 * @param total how many there are, of which these are a part
 */
public record VarietiesView(Instant at, String zone, int total, List<VarietyView> varieties) {
  public VarietiesView {
    varieties = List.copyOf(varieties);
  }

  /**
   * One variety.
   *
   * @param isCheck whether others of its type are compared with it
   * @param years what it bore, a sentence a season
   * @param setApart lots that say nothing of its taste, and why
   * @param besideCheck how it stands beside the check, a sentence each
   * @param suggestion what the three answers speak for
   * @param stillKeeping sound fruits left: until they are gone the answers are provisional
   * @param decided null if nothing was decided yet
   */
  public record VarietyView(
      String crop,
      String cropName,
      String variety,
      boolean isCheck,
      AnswerView ripens,
      AnswerView eats,
      AnswerView keeps,
      List<String> years,
      List<String> setApart,
      List<String> besideCheck,
      SuggestionView suggestion,
      int stillKeeping,
      @Nullable DecidedView decided) {
    public VarietyView {
      years = List.copyOf(years);
      setApart = List.copyOf(setApart);
      besideCheck = List.copyOf(besideCheck);
    }
  }

  /** One question's answer, with what it rests on. */
  public record AnswerView(String answer, List<String> reasons) {
    public AnswerView {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * What the three answers together speak for.
   *
   * @param decision as a decision is written; null if nobody can say yet
   * @param words the same as people read it
   * @param facts the two or three that decide, a sentence each
   * @param change what would change or settle it; may be empty
   * @param how to try it again; empty unless that is suggested
   */
  public record SuggestionView(
      @Nullable String decision, String words, List<String> facts, String change, String how) {
    public SuggestionView {
      facts = List.copyOf(facts);
    }
  }

  /** What the grower decided last. */
  public record DecidedView(String decision, String words, String reason, Instant at) {}
}
