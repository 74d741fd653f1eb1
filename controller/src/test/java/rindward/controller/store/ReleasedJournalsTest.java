package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Recorded;
import rindward.controller.settings.CropGuideReader;

/**
 * A journal of each released version, every kind and every word in it, is read by this one. Such a
 * file is made once, at the release, and never changed; a line is id, subject and entry.
 */
class ReleasedJournalsTest {
  @RegisterExtension final OwnDatabase own = new OwnDatabase();

  @ParameterizedTest
  @ValueSource(strings = "0.1.0")
  void everyEntry_isReadAsItWasMeant_andWrittenByteForByte(String version) throws IOException {
    List<String[]> rows = rows(version);
    Journal journal = new Journal(own.database());
    for (String[] row : rows) {
      journal.append(version + row[0], row[1], OptionalLong.empty(), 1_000, "Wren", row[2]);
    }

    List<Recorded> heard = new EntryService(journal, CropGuideReader.builtIn()).journal();

    assertThat(heard).hasSameSizeAs(rows);
    for (int i = 0; i < rows.size(); i++) {
      Entry entry = heard.get(i).entry();
      assertThat(entry.subject()).isEqualTo(rows.get(i)[1]);
      assertThat(EntryJson.write(entry)).isEqualTo(rows.get(i)[2]);
    }
  }

  private static List<String[]> rows(String version) throws IOException {
    try (InputStream file =
            Objects.requireNonNull(
                ReleasedJournalsTest.class.getResourceAsStream("journals/" + version + ".tsv"));
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
      return lines.lines().map(line -> line.split("\t", 3)).toList();
    }
  }
}
