package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A lot's story is told in sentences: each kind of entry that may be said of a lot has one. */
class SaidWordsTest {
  @Test
  void everyKindOfEntry_hasItsSentence() throws IOException {
    JsonNode kinds =
        new ObjectMapper()
            .readTree(text("/rindward/dashboard/openapi.json"))
            .at("/components/schemas/LotEntry/x-kinds");
    String words = text("/site/lots/words.js");
    String said = words.substring(words.indexOf("  said: {"), words.indexOf("  outbox: {"));
    List<String> missing = new ArrayList<>();
    kinds
        .fieldNames()
        .forEachRemaining(
            kind -> {
              if (!Pattern.compile("\n    '?" + kind + "'?: \\(f").matcher(said).find()) {
                missing.add(kind);
              }
            });
    assertThat(kinds.size()).isGreaterThan(10);
    assertThat(missing).isEmpty();
  }

  private static String text(String resource) throws IOException {
    try (InputStream in =
        Objects.requireNonNull(SaidWordsTest.class.getResourceAsStream(resource))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
