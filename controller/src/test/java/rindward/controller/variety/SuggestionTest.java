package rindward.controller.variety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rindward.controller.journal.Decision;
import rindward.controller.mixed.ShareAmongGroups;
import rindward.controller.mixed.ShareAmongGroups.Seen;

/** The three answers never make up for each other. */
class SuggestionTest {
  private static final Prospect GOOD = Prospect.of(0.96, "Good.");
  private static final Prospect BAD = Prospect.of(0.03, "Bad.");
  private static final Prospect OPEN = Prospect.unknown("Nobody looked.");

  @Test
  void whatRots_isNotGrownAgain_howeverItEats() {
    assertThat(of(GOOD, GOOD, BAD, 1).decision()).contains(Decision.TRY_AGAIN);
    assertThat(of(GOOD, GOOD, BAD, 1).how()).contains("six plants", "taste two fruits");
    assertThat(of(GOOD, GOOD, BAD, 2).decision()).contains(Decision.DROP);
    assertThat(of(GOOD, GOOD, BAD, 2).facts()).startsWith("Bad.");
  }

  @Test
  void whatHardlyRipens_isTriedEarlier_andDroppedAfterASecondYear() {
    assertThat(of(BAD, GOOD, GOOD, 1).how()).contains("three weeks earlier");
    assertThat(of(BAD, GOOD, GOOD, 2).decision()).contains(Decision.DROP);
  }

  @Test
  void allThree_growAgain_andASummerTypeNeedNotKeep() {
    assertThat(of(GOOD, GOOD, GOOD, 1).decision()).contains(Decision.GROW_AGAIN);
    Prospect none = Prospect.notNeeded("Eaten as it comes.");
    assertThat(of(GOOD, GOOD, none, 1).decision()).contains(Decision.GROW_AGAIN);
    assertThat(of(GOOD, GOOD, none, 1).facts()).hasSize(2);
  }

  @Test
  void whatIsNotKnown_isNotSuggested_andSaysWhatWouldSettleIt() {
    assertThat(of(GOOD, OPEN, GOOD, 1).words()).isEqualTo("nobody can say yet");
    assertThat(of(GOOD, OPEN, GOOD, 1).change()).isEqualTo("Four fruits more.");
    assertThat(of(GOOD, GOOD, OPEN, 1).decision()).isEmpty();
    assertThat(of(GOOD, GOOD, OPEN, 1).change()).contains("count what is left");
  }

  @Test
  void lotsAreTheUnitOfChance_notTheirFruits() {
    double one = chance(new Seen(24, 24));
    double three = chance(new Seen(8, 8), new Seen(8, 8), new Seen(8, 8));
    assertThat(three).isGreaterThan(one);
    assertThat(chance(new Seen(0, 12))).isLessThan(0.1);
    assertThat(chance()).isBetween(0.2, 0.3);
  }

  private static double chance(Seen... lots) {
    return new ShareAmongGroups(List.of(lots)).chanceAtLeast(0.75);
  }

  private static Suggestion of(Prospect ripens, Prospect eats, Prospect keeps, int seasons) {
    return Suggestion.of(
        new Chances(ripens, eats, keeps), false, seasons, Optional.of("Four fruits more."));
  }
}
