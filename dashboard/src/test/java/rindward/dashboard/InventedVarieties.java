package rindward.dashboard;

import java.time.Instant;
import java.util.List;
import rindward.dashboard.request.Page;
import rindward.dashboard.varieties.DecisionRefused;
import rindward.dashboard.varieties.DecisionRequest;
import rindward.dashboard.varieties.VarietiesDesk;
import rindward.dashboard.varieties.VarietiesView;
import rindward.dashboard.varieties.VarietiesView.AnswerView;
import rindward.dashboard.varieties.VarietiesView.DecidedView;
import rindward.dashboard.varieties.VarietiesView.SuggestionView;
import rindward.dashboard.varieties.VarietiesView.VarietyView;

/** A check that is well known, and a variety beside it on which something can be decided. */
final class InventedVarieties implements VarietiesDesk {
  private final Instant at;
  private DecidedView decided;

  InventedVarieties(Instant at) {
    this.at = at;
  }

  @Override
  public synchronized VarietiesView varieties(Page page) {
    return new VarietiesView(at, "Europe/London", all().size(), page.in(all()));
  }

  private List<VarietyView> all() {
    return List.of(
        new VarietyView(
            "kabocha",
            "Kabocha",
            "Winterglut",
            true,
            new AnswerView("ripens here", List.of("2025: 40 of 42 ripe.", "2026: 46 of 46.")),
            new AnswerView(
                "liked better than your own average of its type (kabocha)",
                List.of("Liked 7.4 of 9, by 6 fruits in 2 sessions.")),
            new AnswerView("79 % keep past day 200; half-life not reached.", List.of()),
            List.of("2025: 42 fruits, 61.2 kg.", "2026: 46 fruits."),
            List.of(),
            List.of(),
            new SuggestionView(
                "grow-again",
                "grow again",
                List.of("Liked 0.8 points more than your own average of its type."),
                "A year in which it fails one of these would change it.",
                ""),
            31,
            new DecidedView("grow-again", "grow again", "the best keeper", at)),
        new VarietyView(
            "kabocha",
            "Kabocha",
            "Frostgate",
            false,
            new AnswerView("barely ripens here", List.of("2026: 2 of 6 ripe.")),
            new AnswerView("eating not judged", List.of("Nothing ripe has been tasted.")),
            new AnswerView("No fruit that counts was followed.", List.of()),
            List.of("2026: 6 fruits."),
            List.of("F2 of 2026 says nothing of its taste: picked unripe."),
            List.of("Beside the check Winterglut: 1.2 points less; not told apart."),
            new SuggestionView(
                null,
                "nobody can say yet",
                List.of(),
                "If it is as it seems, four fruits more in two sessions would settle it.",
                ""),
            0,
            decided));
  }

  @Override
  public synchronized VarietiesView decide(DecisionRequest decision, String by, String request)
      throws DecisionRefused {
    if (!decision.variety().equals("Frostgate")) {
      throw new DecisionRefused("variety was '" + decision.variety() + "' but no lot came in.");
    }
    String reason = decision.reason() == null ? "" : decision.reason();
    decided =
        new DecidedView(decision.decision(), decision.decision().replace('-', ' '), reason, at);
    return varieties(new Page(1, 1));
  }
}
