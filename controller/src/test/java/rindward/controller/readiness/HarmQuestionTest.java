package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.readiness.Trial.HARVEST;
import static rindward.controller.readiness.Trial.day;

import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Harm;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.HarmLifted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Moved;

/** A bitter fruit stops its lot before every other question, until the owner lifts it. */
class HarmQuestionTest {
  @Test
  void bitterFruit_stopsTheLot_andTakesItOffTheEatingList() {
    Trial trial = kept();
    assertThat(trial.verdict("K4T", 20).state()).isEqualTo(State.READY);
    assertThat(EatingOrder.of(List.of(trial.offer("K4T", 20)))).hasSize(1);

    trial.said(bitter());

    assertThat(trial.verdict("K4T", 30).state()).isEqualTo(State.STOPPED);
    assertThat(trial.verdict("K4T", 30).reasons()).contains("Fruit 4 was bitter.");
    assertThat(trial.verdict("K4T", 30).wouldChange())
        .isEqualTo("Only the owner lifts it, with a reason.");
    assertThat(EatingOrder.of(List.of(trial.offer("K4T", 30)))).isEmpty();
  }

  @Test
  void liftedByTheOwner_itIsEatenAgain() {
    Trial trial =
        kept().said(bitter()).said(new HarmLifted("K4T", "another fruit's label", day(31)));
    assertThat(trial.verdict("K4T", 32).state()).isEqualTo(State.READY);
  }

  private static KitchenTasted bitter() {
    CutFruit cut = new CutFruit(null, null, "", false, false, null, null, List.of(Harm.BITTER));
    return new KitchenTasted("K4T", "4", cut, null, null, List.of(), "", day(25));
  }

  private static Trial kept() {
    return new Trial()
        .place("curing", 28_000, 76_000)
        .place("storage", 12_500, 60_000)
        .said(new Harvested("K4T", "kabocha", "", 20, "curing", HARVEST))
        .said(new Moved("K4T", "storage", day(11)));
  }
}
