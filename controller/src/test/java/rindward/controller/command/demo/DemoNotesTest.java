package rindward.controller.command.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Recorded;
import rindward.controller.ledger.Accuracies;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.History;
import rindward.controller.ledger.LotAccount;
import rindward.controller.ledger.LotExposure;
import rindward.controller.ledger.Run;
import rindward.controller.lot.EntryCheck;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Sessions;
import rindward.controller.readiness.State;
import rindward.controller.readiness.Verdict;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.tasting.Attribute;
import rindward.controller.variety.Experience;
import rindward.controller.variety.Grown;
import rindward.controller.variety.Tasted;

/** The demo's lots are told for the right reasons. */
class DemoNotesTest {
  private static final CropGuide GUIDE = CropGuideReader.builtIn();
  private static final Instant START = Instant.parse("2025-09-22T12:00:00Z");
  private static final Instant NOW = START.plus(Duration.ofDays(70));
  private static final int HOLD_MILLIS = 300_000;

  private final List<Recorded> journal = new ArrayList<>();

  @BeforeEach
  void say() {
    for (DemoNotes.Note note : new DemoNotes(START).all()) {
      Instant said = START.plus(Duration.ofDays(note.day()));
      assertThat(EntryCheck.refusal(note.entry(), journal, GUIDE, said)).isEmpty();
      journal.add(new Recorded(journal.size() + 1L, said, "Wren", note.entry()));
    }
  }

  @Test
  void lotThatKeepsAYear_isStillReady_becauseItWasTastedAndFoundGood() {
    Verdict verdict = verdict("S8A");
    assertThat(verdict.state()).isEqualTo(State.READY);
    assertThat(verdict.reasons().get(0)).contains("Nobody has tasted it later than day 325");
    assertThat(verdict.yardstick().sentences().get(0)).contains("at least 400 by what you saw");
  }

  @Test
  void lotInItsThirdWeek_isAtItsBest_byLastYearsTastes() {
    Verdict verdict = verdict("D3C");
    assertThat(verdict.phase()).contains("at its best");
    assertThat(verdict.reasons().get(0)).contains("today is day 20");
  }

  @Test
  void unripeLot_isUnlikelyEverGood_andTheFrostIsNotBlamed() {
    Verdict verdict = verdict("L4A");
    assertThat(verdict.state()).isEqualTo(State.UNLIKELY_EVER_GOOD);
    assertThat(verdict.reasons())
        .anyMatch(s -> s.startsWith("It was picked 27 days after fruit set"))
        .anyMatch(s -> s.contains("is not to blame"));
  }

  @Test
  void lotThatLayInTheColdBarn_isInjured() {
    Verdict verdict = verdict("K5E");
    assertThat(verdict.state()).isEqualTo(State.INJURED);
    assertThat(verdict.reasons().get(0)).startsWith("Two weeks this cold injure it");
  }

  @Test
  void session_isScoredBySix_andClosed() {
    assertThat(
            Sessions.of(journal)
                .find("early-winter")
                .orElseThrow()
                .result()
                .orElseThrow()
                .results(Attribute.LIKING)
                .get(0)
                .table()
                .panelists())
        .hasSize(6);
  }

  private Verdict verdict(String code) {
    List<Grown> lots = Lots.of(journal).all().stream().map(this::grown).toList();
    Grown asked = lots.stream().filter(g -> g.lot().code().equals(code)).findFirst().orElseThrow();
    return Experience.of(lots, Tasted.byLot(List.copyOf(Sessions.of(journal).all())))
        .judge(asked, NOW)
        .verdict();
  }

  private Grown grown(Lot lot) {
    Crop crop = GUIDE.crop(lot.crop()).orElseThrow();
    List<Exposure> life = Exposure.of(lot, Accuracies.of(journal), DemoNotesTest::air, NOW);
    LotAccount account = LotAccount.of(life, crop, HOLD_MILLIS);
    return new Grown(
        lot, crop, LotExposure.of(lot, crop, life, account, air(lot.place()), HOLD_MILLIS, NOW));
  }

  /** The barn as the demo measures it; nothing is known of any other place. */
  private static History air(String place) {
    return (from, to, visit) -> {
      if (place.equals("barn")) {
        int count = (int) ((to - from) / HOLD_MILLIS) + 1;
        int[] temperature = new int[count];
        int[] humidity = new int[count];
        Arrays.fill(temperature, 5_600);
        Arrays.fill(humidity, 78_000);
        visit.accept(new Run(from, HOLD_MILLIS, count, temperature, humidity));
      }
    };
  }
}
