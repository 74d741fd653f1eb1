package rindward.controller.lot;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rindward.controller.journal.EntryKind;
import rindward.controller.journal.EntryKinds;

/** No kind of entry about lots is forgotten when a lot is told. */
class PlacesTest {
  @Test
  void everyKindAboutLots_hasItsPlace() {
    assertThat(EntryKinds.ALL)
        .filteredOn(EntryKind::isOfLot)
        .allMatch(kind -> Places.has(kind.type()));
  }
}
