package rindward.controller.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.crop.Harm;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Culled;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.FieldDay;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.FieldTexts;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.MisfitAccepted;
import rindward.controller.journal.Misstated;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.Planted;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Recounted;
import rindward.controller.journal.Reserved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RipenessSign;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Used;
import rindward.controller.journal.Weighed;
import rindward.controller.tasting.Use;

/** A file of lots says the same when it is read again, and every bad line is told. */
class LotFileTest {
  private static final Instant AT = Instant.parse("2026-09-20T15:00:00.123Z");
  private static final ZoneId ZONE = ZoneId.of("America/Chicago");

  @TempDir Path folder;

  @Test
  void everyKind_writtenAndReadAgain_saysTheSame() throws Exception {
    List<Entry> entries =
        List.of(
            new Planted(
                "K4T",
                "P7",
                "kabocha",
                "Winterglut",
                true,
                6,
                LocalDate.of(2026, 4, 20),
                null,
                95,
                AT),
            new Harvested("K4T", "kabocha", "", 46, "porch, left", AT, Grade.GREEN, 51_000, "P7"),
            new Moved("K4T", " the \"old\" cellar ", AT),
            new Weighed("K4T", "tag 3", 1, 1_400, 0, AT),
            new Weighed("K4T", null, 20, 31_400, 1_900, AT),
            new Culled("K4T", 2, Cause.EATEN_FAILING, "soft,\nbrown \\ black", AT),
            new Used("K4T", 1, Purpose.SECOND_LOOK, AT),
            new Recounted("K4T", 40, AT),
            new Reserved("K4T", Purpose.KEEPER_TEST, 4, AT),
            new RipenessNoted("K4T", RipenessSign.SEEDS_FLAT, 15, 38, 1, AT),
            new FrostNoted("K4T", -1_500, 90, true, false, AT),
            new KitchenTasted(
                "K4T",
                "tag 3",
                new CutFruit(
                    Seeds.FLAT,
                    38,
                    "pale, yellow",
                    true,
                    false,
                    13_000,
                    null,
                    List.of(Harm.BITTER)),
                4,
                null,
                List.of(Use.PIE, Use.SOUP),
                "watery",
                AT),
            new FieldDayNoted("K4T", FieldDay.FIRST_FLOWER, LocalDate.of(2026, 7, 20), 0, AT),
            new OffTypeNoted("K4T", "pale, and pear-shaped", AT),
            new Noted("K4T", "# \u00e9t\u00e9", AT),
            new Noted("K4T", "=HYPERLINK(\"http://elsewhere.example\")", AT),
            new Noted("K4T", "-2 C at the door", AT),
            new Attested("K4T", "stem dry", AT),
            new MisfitAccepted("K4T", "storage", AT));

    Path file = file(LotFile.write(recorded(entries)));

    LotFile.Content content = LotFile.read(file, ZONE, UnaryOperator.identity());
    assertThat(content.rejected()).isEmpty();
    assertThat(content.rows()).extracting(LotFile.Row::entry).isEqualTo(entries);
  }

  @Test
  void read_everyBadLine_isListedWithItsLine() throws Exception {
    Path file =
        file(
            "\uFEFFlot,crop,count,place,at\n"
                + "a3a,turban,12,porch,2026-09-20\n"
                + "c3c,kabocha,many,porch,2026-09-20\n"
                + "\n"
                + "e3e,kabocha,3,porch,yesterday\n"
                + "f3f,\"kabocha,3,porch,2026-09-20\n"
                + "h3h,kabocha,3,porch,2026-09-20,more\n");

    LotFile.Content content =
        LotFile.read(file, ZONE, name -> name.equals("turban") ? "buttercup" : name);

    assertThat(content.rows())
        .containsExactly(
            new LotFile.Row(
                2,
                new Harvested(
                    "A3A", "buttercup", "", 12, "porch", Instant.parse("2026-09-20T05:00:00Z"))));
    assertThat(content.rejected())
        .containsExactly(
            new RejectedRow(3, "count was 'many' but it must be a whole number"),
            new RejectedRow(
                5,
                "at was 'yesterday' but it must be a day or a time, such as 2026-10-03 or"
                    + " 2026-10-03T14:30"),
            new RejectedRow(6, "a quote was opened or closed in the wrong place"),
            new RejectedRow(7, "the line had 6 fields but the header names 5"));
  }

  @Test
  void read_unknownColumn_isRefusedWithTheLikelyOne() throws Exception {
    Path file = file("lot,crop,coutn\n");

    assertThatThrownBy(() -> LotFile.read(file, ZONE, UnaryOperator.identity()))
        .isInstanceOf(RecordingException.class)
        .hasMessageContaining("column was 'coutn' but it must be one of kind, lot")
        .hasMessageEndingWith("did you mean 'count'?");
  }

  @Test
  void read_notUtf8_saysSo() throws Exception {
    Path file = folder.resolve("latin.csv");
    Files.write(file, new byte[] {'l', 'o', 't', '\n', (byte) 0xE9, '\n'});

    assertThatThrownBy(() -> LotFile.read(file, ZONE, UnaryOperator.identity()))
        .isInstanceOf(RecordingException.class)
        .hasMessageContaining("UTF-8");
  }

  @Test
  void changed_oneField_leavesTheOthers() throws Exception {
    Culled culled = new Culled("K4T", 2, Cause.ROT, "at the stem", AT);

    assertThat(changed(culled, "count", "1"))
        .isEqualTo(new Culled("K4T", 1, Cause.ROT, "at the stem", AT));
    assertThatThrownBy(() -> changed(culled, "cause", "sadness"))
        .hasMessageContaining("cause was 'sadness' but it must be one of rot, soft");
  }

  private static Entry changed(Entry entry, String column, String text) throws Misstated {
    return EntryKinds.changed(
        entry, new FieldTexts(Map.of(column, text), ZONE, UnaryOperator.identity()));
  }

  private static List<Recorded> recorded(List<Entry> entries) {
    return IntStream.range(0, entries.size())
        .mapToObj(i -> new Recorded(i + 1L, AT, "Wren", entries.get(i)))
        .toList();
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("lots.csv"), text);
  }
}
