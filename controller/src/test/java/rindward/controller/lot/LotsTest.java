package rindward.controller.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rindward.controller.lot.Entry.Corrected;
import rindward.controller.lot.Entry.Harvested;
import rindward.controller.lot.Entry.Moved;

/** Lots as the journal tells them, and what the journal does not take. */
class LotsTest {
  private static final Instant HARVEST = Instant.parse("2026-09-20T15:00:00Z");
  private static final Instant NOW = Instant.parse("2026-11-01T12:00:00Z");

  private final List<Recorded> journal = new ArrayList<>();

  @Test
  void of_lotThatMoved_hasStaysWithoutGaps() {
    said(harvested("KB1"));
    said(new Moved("KB1", "storage", day(10)));
    said(new Moved("KB1", "kitchen", day(40)));

    Lot lot = Lots.of(journal).find("KB1").orElseThrow();

    assertThat(lot.stays())
        .containsExactly(
            new Stay("curing", HARVEST, day(10)),
            new Stay("storage", day(10), day(40)),
            new Stay("kitchen", day(40), Instant.MAX));
    assertThat(lot.place()).isEqualTo("kitchen");
  }

  @Test
  void of_moveToldLate_isPutWhereItBelongs() {
    said(harvested("KB1"));
    said(new Moved("KB1", "kitchen", day(40)));
    said(new Moved("KB1", "storage", day(10)));

    assertThat(Lots.of(journal).find("KB1").orElseThrow().stays())
        .extracting(Stay::place)
        .containsExactly("curing", "storage", "kitchen");
  }

  @Test
  void of_correctedMove_isAsIfItHadBeenSaidRightAtOnce() {
    said(harvested("KB1"));
    long wrong = said(new Moved("KB1", "storage", day(10)));
    said(new Corrected(wrong, new Moved("KB1", "storage", day(9))));

    Lot lot = Lots.of(journal).find("KB1").orElseThrow();

    assertThat(lot.stays().get(0).to()).isEqualTo(day(9));
    assertThat(lot.version()).isEqualTo(3);
    assertThat(journal).hasSize(3);
  }

  @Test
  void refusal_eachContradiction_isOneSentence() {
    said(harvested("KB1"));

    assertThat(refusal(harvested("KB1")))
        .contains("lot was 'KB1' but a lot of that code exists already");
    assertThat(refusal(new Harvested("KB2", "marrow", "", 4, "curing", HARVEST)))
        .contains("crop was 'marrow' but the crop guide has no type of that name");
    assertThat(refusal(new Harvested("kb 2", "kabocha", "", 4, "curing", HARVEST)))
        .contains("lot was 'kb 2' but it must be 1 to 12 capital letters, digits or hyphens");
    assertThat(refusal(new Harvested("KB2", "kabocha", "", 0, "curing", HARVEST)))
        .contains("count was '0' but it must be at least 1");
    assertThat(refusal(new Moved("KB9", "storage", day(1))))
        .contains("lot was 'KB9' but there is no lot of that code");
    assertThat(refusal(new Moved("KB1", "storage", HARVEST.minusSeconds(60))))
        .hasValueSatisfying(s -> assertThat(s).contains("was harvested only at"));
    assertThat(refusal(new Moved("KB1", "storage", NOW.plusSeconds(3600))))
        .hasValueSatisfying(s -> assertThat(s).contains("must not lie in the future"));
    assertThat(refusal(new Moved("KB1", " ", day(1))))
        .contains("place was empty but it must name a room or another place");
    assertThat(refusal(new Corrected(1, new Moved("KB1", "storage", day(1)))))
        .hasValueSatisfying(s -> assertThat(s).contains("of the same kind about the same subject"));
  }

  private Optional<String> refusal(Entry entry) {
    return EntryCheck.refusal(entry, journal, Set.of("kabocha"), NOW);
  }

  private long said(Entry entry) {
    assertThat(refusal(entry)).isEmpty();
    long id = journal.size() + 1L;
    journal.add(new Recorded(id, NOW, "Wren", entry));
    return id;
  }

  private static Harvested harvested(String code) {
    return new Harvested(code, "kabocha", "Winterglut", 46, "curing", HARVEST);
  }

  private static Instant day(int day) {
    return HARVEST.plusSeconds(86_400L * day);
  }
}
