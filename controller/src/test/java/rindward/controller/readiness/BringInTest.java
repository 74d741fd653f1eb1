package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static rindward.controller.readiness.Trial.GUIDE;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import rindward.controller.journal.FieldDay;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.Planted;
import rindward.controller.readiness.BringIn.InField;
import rindward.controller.readiness.BringIn.Night;
import rindward.controller.readiness.BringIn.Place;
import rindward.controller.readiness.BringIn.Worth;

class BringInTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 9, 24);
  private static final Instant SPRING = Instant.parse("2026-04-01T00:00:00Z");

  @Test
  void lightFrost_bringsRipeBeforeRipening_andTooYoungLast() {
    List<Place> order =
        BringIn.order(
            List.of(
                field("YNG", "kabocha", 15),
                field("UNK", "kabocha", -1),
                field("OLD", "kabocha", 60),
                field("MID", "kabocha", 38)),
            -2_000,
            TODAY);

    assertThat(order)
        .extracting(place -> place.field().plan().lot(), Place::worth)
        .containsExactly(
            tuple("OLD", Worth.RIPE),
            tuple("MID", Worth.RIPENS_INSIDE),
            tuple("UNK", Worth.NOT_KNOWN),
            tuple("YNG", Worth.TOO_YOUNG));
    assertThat(order.get(0).reasons())
        .anyMatch(s -> s.startsWith("Ripe: 60 days after fruit set; kabocha"))
        .contains(
            "-2.0 C kills the vines: nothing ripens after that, and bare fruit is in danger from"
                + " -2.8 C.");
  }

  @Test
  void coldNightWithoutFrost_isNoHurry_andHardFrostHurtsTheFruit() {
    InField ripe = field("OLD", "kabocha", 60);

    assertThat(BringIn.order(List.of(ripe), 6_000, TODAY).get(0).night()).isEqualTo(Night.CHILLS);
    assertThat(BringIn.order(List.of(ripe), 14_000, TODAY).get(0).night())
        .isEqualTo(Night.HARMLESS);
    assertThat(BringIn.order(List.of(ripe), -4_000, TODAY).get(0).night())
        .isEqualTo(Night.HURTS_FRUIT);
  }

  @Test
  void whatANightDoes_changesAtTheGuidesLimits() {
    // Kabocha freezes at -0.8 C, is hurt bare from -2.8 C on and chilled below 10 C.
    assertThat(night("kabocha", 10_000)).isEqualTo(Night.HARMLESS);
    assertThat(night("kabocha", 9_999)).isEqualTo(Night.CHILLS);
    assertThat(night("kabocha", 1)).isEqualTo(Night.CHILLS);
    assertThat(night("kabocha", 0)).isEqualTo(Night.KILLS_VINES);
    assertThat(night("kabocha", -2_799)).isEqualTo(Night.KILLS_VINES);
    assertThat(night("kabocha", -2_800)).isEqualTo(Night.HURTS_FRUIT);
    int freezing = GUIDE.crop("onion").orElseThrow().keeping().freezing().value();
    assertThat(night("onion", 1)).isEqualTo(Night.HARMLESS);
    assertThat(night("onion", freezing + 1)).isEqualTo(Night.KILLS_VINES);
    assertThat(night("onion", freezing)).isEqualTo(Night.HURTS_FRUIT);
  }

  @Test
  void reasonsTellTheNightAndTheRipeness() {
    assertThat(reasons(14_000))
        .containsExactly("Due by the days on its packet.", "14.0 C does it no harm.");
    assertThat(reasons(6_000))
        .contains("6.0 C is below 10.0 C: one such night is nothing, many add up.");
    assertThat(reasons(-4_000)).contains("-4.0 C hurts the fruit itself (it freezes at -0.8 C).");
    assertThat(place(planned("kabocha", null)).reasons().get(0))
        .isEqualTo(
            "Nothing was noted of its fruit set, and its packet's days are not over or not known.");
  }

  private static Night night(String crop, int lowMilliC) {
    return BringIn.order(List.of(planned(crop, null)), lowMilliC, TODAY).get(0).night();
  }

  private static List<String> reasons(int lowMilliC) {
    InField due = planned("kabocha", TODAY.minusDays(100));
    return BringIn.order(List.of(due), lowMilliC, TODAY).get(0).reasons();
  }

  @Test
  void flowerNoted_tellsOnlyTheOldestItCanBe_soNobodyCallsItRipe() {
    assertThat(worth(flowered(15))).isEqualTo(Worth.TOO_YOUNG);
    assertThat(worth(flowered(60))).isEqualTo(Worth.NOT_KNOWN);
    assertThat(place(flowered(60)).reasons().get(0))
        .startsWith("Ripe or not, nobody can tell: at most 60 days after fruit set; kabocha");
  }

  @Test
  void fruitSetNoted_isRipeAtTheGuidesDay_andRipensInsideFromTheOther() {
    // Kabocha: ripe from 40 days on, ripens inside from 30.
    assertThat(worth(field("A", "kabocha", 40))).isEqualTo(Worth.RIPE);
    assertThat(worth(field("A", "kabocha", 39))).isEqualTo(Worth.RIPENS_INSIDE);
    assertThat(worth(field("A", "kabocha", 30))).isEqualTo(Worth.RIPENS_INSIDE);
    assertThat(worth(field("A", "kabocha", 29))).isEqualTo(Worth.TOO_YOUNG);
  }

  @Test
  void nothingNoted_isRipeOnlyOnceThePacketsDaysAreOver() {
    assertThat(worth(planned("kabocha", null))).isEqualTo(Worth.NOT_KNOWN);
    assertThat(worth(planned("kabocha", TODAY.minusDays(99)))).isEqualTo(Worth.NOT_KNOWN);
    assertThat(worth(planned("kabocha", TODAY.minusDays(100)))).isEqualTo(Worth.RIPE);
    assertThat(worth(planned("onion", null))).isEqualTo(Worth.NOT_KNOWN);
    assertThat(worth(planned("onion", TODAY.minusDays(99)))).isEqualTo(Worth.NOT_KNOWN);
    assertThat(worth(planned("onion", TODAY.minusDays(100)))).isEqualTo(Worth.RIPE);
  }

  private static Worth worth(InField field) {
    return place(field).worth();
  }

  private static Place place(InField field) {
    return BringIn.order(List.of(field), -2_000, TODAY).get(0);
  }

  private static InField flowered(int daysAgo) {
    return new InField(
        field("FLW", "kabocha", -1).plan(),
        GUIDE.crop("kabocha").orElseThrow(),
        List.of(
            new FieldDayNoted("FLW", FieldDay.FIRST_FLOWER, TODAY.minusDays(daysAgo), 0, SPRING)));
  }

  /** Nothing noted of its fruit; the packet says 100 days. */
  private static InField planned(String crop, @Nullable LocalDate sown) {
    return new InField(
        new Planted("PLN", "P1", crop, "", false, 6, sown, null, 100, SPRING),
        GUIDE.crop(crop).orElseThrow(),
        List.of());
  }

  private static InField field(String code, String crop, int daysSinceSet) {
    Planted plan = new Planted(code, "P1", crop, "", false, 6, null, null, null, SPRING);
    return new InField(
        plan,
        GUIDE.crop(crop).orElseThrow(),
        daysSinceSet < 0
            ? List.of()
            : List.of(
                new FieldDayNoted(
                    code, FieldDay.FRUIT_SET, TODAY.minusDays(daysSinceSet), 0, SPRING)));
  }
}
