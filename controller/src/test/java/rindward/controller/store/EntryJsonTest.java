package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rindward.controller.crop.Harm;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.AlarmAnswer;
import rindward.controller.journal.AlarmAnswered;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Culled;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Decision;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKind;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.FieldDay;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.GerminationTested;
import rindward.controller.journal.Grade;
import rindward.controller.journal.HarmLifted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.LetRun;
import rindward.controller.journal.MisfitAccepted;
import rindward.controller.journal.Moved;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.Planted;
import rindward.controller.journal.Preparation;
import rindward.controller.journal.ProbeCalibrated;
import rindward.controller.journal.Proof;
import rindward.controller.journal.ProofTried;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Recounted;
import rindward.controller.journal.Reserved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RipenessSign;
import rindward.controller.journal.RoomAsked;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.SwitchedByHand;
import rindward.controller.journal.TakenBack;
import rindward.controller.journal.Used;
import rindward.controller.journal.UsesTicked;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.journal.Weighed;
import rindward.controller.journal.Withdrawn;
import rindward.controller.journal.WorkAnnounced;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Use;
import rindward.controller.tasting.design.Blinding;
import rindward.hardware.OutputKind;

/** What stands on a disk can be read for ten years. */
class EntryJsonTest {
  private static final Instant AT = Instant.parse("2026-09-20T15:00:00Z");

  @RegisterExtension final OwnDatabase own = new OwnDatabase();

  /** Rows exactly as the first version wrote them. */
  private static final List<String> FIRST_VERSION =
      List.of(
          "{\"kind\":\"harvested\",\"lot\":\"KB1\",\"crop\":\"kabocha\",\"variety\":\"Winterglut\","
              + "\"count\":46,\"place\":\"curing\",\"at\":\"2026-09-20T15:00:00Z\"}",
          "{\"kind\":\"moved\",\"lot\":\"KB1\",\"place\":\"storage\",\"at\":\"2026-10-01T08:00:00Z\"}",
          "{\"kind\":\"corrected\",\"entry\":2,\"instead\":{\"kind\":\"moved\",\"lot\":\"KB1\","
              + "\"place\":\"cellar\",\"at\":\"2026-10-01T08:00:00Z\"},"
              + "\"at\":\"2026-10-01T08:00:00Z\"}");

  @Test
  void read_rowsOfTheFirstVersion_tellTheSameLot() {
    Journal journal = new Journal(own.database());
    for (int i = 0; i < FIRST_VERSION.size(); i++) {
      journal.append("r" + i, "KB1", OptionalLong.empty(), 1_000, "Wren", FIRST_VERSION.get(i));
    }

    List<Recorded> heard = new EntryService(journal, CropGuideReader.builtIn()).journal();
    Lot lot = Lots.of(heard).find("KB1").orElseThrow();

    assertThat(lot.count()).isEqualTo(46);
    assertThat(lot.place()).isEqualTo("cellar");
    assertThat(lot.grade()).isNull();
    assertThat(lot.fruitGrams()).isEmpty();
    assertThat(lot.fruits().sound()).isEqualTo(46);
  }

  static List<Entry> everyKind() {
    return List.of(
        new Planted(
            "K4T", "P7", "kabocha", "Winterglut", true, 6, LocalDate.of(2026, 4, 20), null, 95, AT),
        new Harvested("KB1", "kabocha", "", 46, "porch", AT, Grade.DOUBTFUL, 51_000, "P7"),
        new Moved("KB1", "storage", AT),
        new Weighed("KB1", "tag 3", 1, 1_400, 0, AT),
        new Culled("KB1", 2, Cause.EATEN_FAILING, "soft at the stem", AT),
        new Used("KB1", 1, Purpose.PANEL, AT),
        new Recounted("KB1", 40, AT),
        new Reserved("KB1", Purpose.KEEPER_TEST, 4, AT),
        new RipenessNoted("KB1", RipenessSign.SEEDS_FLAT, 15, 40, 1, AT),
        new FrostNoted("KB1", -1_500, 90, true, false, AT),
        new FieldDayNoted("KB1", FieldDay.FRUIT_SET, LocalDate.of(2026, 8, 8), 2, AT),
        new OffTypeNoted("KB1", "pale rind", AT),
        new GerminationTested("KB1", 50, 46, 10, "damp paper, 25 C", AT),
        new Noted("KB1", "grown on the wet side", AT),
        new Attested("KB1", "stem dry, rind resists the nail", AT),
        new MisfitAccepted("KB1", "storage", AT),
        new HarmLifted("KB1", "a gourd of the neighbours", AT),
        new Withdrawn("KB1", 7, AT),
        new KitchenTasted(
            "KB1",
            "tag 3",
            new CutFruit(
                Seeds.FULL, 38, "deep orange", true, false, 24_500, 11_000, List.of(Harm.BITTER)),
            8,
            2,
            List.of(Use.PIE, Use.SOUP),
            "chestnut",
            AT),
        new SessionPlanned(
            "winter-1",
            List.of(
                new Served("K4T", "K4T", List.of("1", "2")),
                new Served("R7A", "R7A", List.of("1"))),
            List.of("Wren", "Ash"),
            "K4T",
            "R7A",
            null,
            6,
            Blinding.PARTIAL,
            new Preparation("baked", 190, "3 cm cubes", "a fork goes in", 50, "middle"),
            7L,
            AT),
        new SampleCooked(
            "winter-1", "K4T", "K4T", "1", 1_400, CutFruit.of(Seeds.FLAT), 45, "soft", AT),
        new Scored("winter-1", "Wren", "417", Attribute.LIKING, 8, AT),
        new UsesTicked("winter-1", "Wren", "417", List.of(Use.PIE), AT),
        new TakenBack("winter-1", 3, AT),
        new SessionClosed("winter-1", false, AT),
        new VarietyDecided("kabocha", "Winterglut", Decision.TRY_AGAIN, "sow in April", AT),
        new AccuracyStated("storage", 200, 2_000, AT),
        new OutputTried("storage", "storage-heater", "GPIO 17, on when high", AT),
        new ProofTried("storage", Proof.HIGH_LIMIT, "GPIO 17", "a lamp", null, 41_000, "air", AT),
        new ProofTried("", Proof.HEARTBEAT_STOPPED, "GPIO 24", "timed", 27, null, null, AT),
        new SwitchedByHand("storage", OutputKind.HEATER, true, AT.plusSeconds(600), AT),
        new LetRun("storage", OutputKind.HEATER, AT),
        new RoomAsked(
            "storage",
            new Range(new Limits(10_000, 13_000), new Limits(50_000, 70_000)),
            5_000,
            false,
            AT),
        new ProbeCalibrated("air", "0x44 on I2C bus 1", -200, 4_000, 960_000, "two salts", AT),
        new AlarmAnswered("too-dry@storage", AlarmAnswer.SHELVED, AT.plusSeconds(3600), AT),
        new AlarmAnswered("heater-runaway@storage/h", AlarmAnswer.RESET, null, AT, "384-172"),
        new WorkAnnounced("storage", AT.plusSeconds(7200), AT),
        new Corrected(3, new Moved("KB1", "cellar", AT)));
  }

  @ParameterizedTest
  @MethodSource("everyKind")
  void everyKind_isReadAsItWasWritten(Entry entry) {
    assertThat(EntryJson.taken(entry.subject(), AT, EntryJson.write(entry))).isEqualTo(entry);
  }

  /** What a newer version wrote is of no kind. */
  @Test
  void everyKind_ofTheSealedInterface_isDeclaredAndTested() {
    List<Class<?>> kinds = new ArrayList<>(kinds(Entry.class));
    kinds.remove(NewerEntry.class);

    assertThat(EntryKinds.ALL.stream().<Class<?>>map(EntryKind::type))
        .containsExactlyInAnyOrderElementsOf(kinds);
    assertThat(everyKind().stream().<Class<?>>map(Object::getClass).distinct())
        .containsExactlyInAnyOrderElementsOf(kinds);
  }

  private static List<Class<?>> kinds(Class<?> sealed) {
    return Arrays.stream(sealed.getPermittedSubclasses())
        .flatMap(c -> c.isInterface() ? kinds(c).stream() : Stream.of(c))
        .<Class<?>>map(c -> c)
        .toList();
  }
}
