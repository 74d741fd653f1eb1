package rindward.controller.lot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.FieldTexts;
import rindward.controller.journal.GerminationTested;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Recorded;
import rindward.controller.settings.CropGuideReader;

/** How many seeds of a lot sprout is said of a lot that has come in, and no more than all can. */
class GerminationTest {
  private static final Instant AT = Instant.parse("2027-02-01T12:00:00Z");
  private static final List<Recorded> JOURNAL =
      List.of(new Recorded(1, AT, "Wren", new Harvested("KB1", "kabocha", "", 4, "porch", AT)));

  @Test
  void aRow_isReadAndWritten() throws Exception {
    Map<String, String> row =
        Map.of(
            "kind", "germination",
            "lot", "kb1",
            "at", "2027-02-01T12:00:00Z",
            "seeds_tested", "50",
            "seeds_sprouted", "46",
            "days", "10");
    Entry entry =
        EntryKinds.fromTexts(new FieldTexts(row, ZoneOffset.UTC, UnaryOperator.identity()));

    assertThat(entry).isEqualTo(new GerminationTested("KB1", 50, 46, 10, "", AT));
    assertThat(EntryKinds.row(entry)).containsEntry("seeds_sprouted", "46");
    assertThatThrownBy(
            () ->
                EntryKinds.fromTexts(
                    new FieldTexts(
                        Map.of("kind", "germination", "at", "2027-02-01"),
                        ZoneOffset.UTC,
                        UnaryOperator.identity())))
        .hasMessage("seeds_tested was '' but it must be a whole number");
  }

  @Test
  void moreThanAllSeeds_orALotThatIsNotThere_isRefused() {
    assertThat(refusal(new GerminationTested("KB1", 50, 50, 10, "", AT))).isEmpty();
    assertThat(refusal(new GerminationTested("KB1", 50, 51, 10, "", AT)))
        .isEqualTo("sprouted was '51' but it must be at most 50");
    assertThat(refusal(new GerminationTested("KB9", 50, 50, 10, "", AT)))
        .isEqualTo("lot was 'KB9' but there is no lot of that code");
  }

  private static String refusal(Entry entry) {
    return EntryCheck.refusal(entry, JOURNAL, CropGuideReader.builtIn(), AT).orElse("");
  }
}
