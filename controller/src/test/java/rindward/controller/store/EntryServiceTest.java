package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Recorded;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.store.EntryService.Refused;

/** Several things said in one breath. */
class EntryServiceTest {
  private static final Instant HARVEST = Instant.parse("2026-09-20T15:00:00Z");
  private static final Instant NOW = Instant.parse("2026-11-01T12:00:00Z");

  @RegisterExtension final OwnDatabase own = new OwnDatabase();
  private EntryService door;

  @BeforeEach
  void open() {
    door = new EntryService(new Journal(own.database()), CropGuideReader.builtIn());
  }

  @Test
  void sayAll_everyLineGood_keepsAllInOrder() {
    List<Entry> entries =
        List.of(harvested("A3A"), new Moved("A3A", "cellar", NOW), harvested("C3C"));

    assertThat(door.sayAll(entries, "Wren", "r1", NOW)).isEmpty();

    assertThat(door.journal()).extracting(r -> r.entry()).isEqualTo(entries);
  }

  @Test
  void sayAll_oneLineBad_keepsNoneAndNamesEveryBadOne() {
    List<Entry> entries =
        List.of(harvested("A3A"), harvested("A3A"), new Moved("X9X", "cellar", NOW));

    assertThat(door.sayAll(entries, "Wren", "r1", NOW))
        .containsExactly(
            new Refused(1, "lot was 'A3A' but a lot of that code exists already"),
            new Refused(2, "lot was 'X9X' but there is no lot of that code"));
    assertThat(door.journal()).isEmpty();
  }

  @Test
  void sayAll_sentAgain_changesNothing() {
    List<Entry> entries = List.of(harvested("A3A"), harvested("C3C"));
    door.sayAll(entries, "Wren", "r1", NOW);

    assertThat(door.sayAll(entries, "Wren", "r1", NOW)).isEmpty();

    assertThat(door.journal()).hasSize(2);
  }

  /** Of ten years' entries a third of the memory was names and moments, written out each time. */
  @Test
  void whoSpokeAndWhen_isHeldOnce_howeverManyThingsWereSaid() {
    door.sayAll(List.of(harvested("A3A"), harvested("C3C")), "Wren", "r1", NOW);

    Recorded first = door.journal().get(0);
    Recorded second = door.journal().get(1);
    assertThat(second.by()).isSameAs(first.by());
    assertThat(second.recordedAt()).isSameAs(first.recordedAt());
    assertThat(door.journal()).isSameAs(door.journal());
  }

  private static Harvested harvested(String code) {
    return new Harvested(code, "kabocha", "", 4, "porch", HARVEST);
  }
}
