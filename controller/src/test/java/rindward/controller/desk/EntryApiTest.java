package rindward.controller.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rindward.controller.journal.EntryKind;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.Speaker;
import rindward.dashboard.Dashboard;

/** The description of the API says of every kind of entry what its declaration says. */
class EntryApiTest {
  private static final ObjectMapper JSON = JsonMapper.builder().build();

  @Test
  void kindsOfLotEntries_areDescribedAsTheyAreDeclared() throws IOException {
    Map<String, Map<String, String>> declared = new LinkedHashMap<>();
    for (EntryKind<?> kind : EntryKinds.ALL) {
      if (kind.hasRow()) {
        declared.put(kind.name(), kind.columns());
      }
    }

    assertThat(api().at("/components/schemas/LotEntry/x-kinds"))
        .as("put this there: %s", JSON.writeValueAsString(declared))
        .isEqualTo(JSON.valueToTree(declared));
  }

  /** One route takes what a helper may say; what only the owner says has a way of its own. */
  @Test
  void whoMayCallTheRoute_maySayEveryKindButTheOwners() throws IOException {
    String access = api().at("/paths/~1api~1lots~1entries/post/x-access").asText();
    Speaker caller = Speaker.valueOf(access.toUpperCase(Locale.ROOT));

    assertThat(EntryKinds.ALL)
        .filteredOn(EntryKind::hasRow)
        .filteredOn(kind -> kind.speaker() != caller)
        .extracting(EntryKind::name, EntryKind::speaker)
        .containsExactly(tuple("harm-lifted", Speaker.OWNER));
  }

  private static JsonNode api() throws IOException {
    try (InputStream file = Dashboard.class.getResourceAsStream("openapi.json")) {
      return JSON.readTree(file);
    }
  }
}
