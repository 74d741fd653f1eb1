package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Cure;
import rindward.controller.crop.Days;
import rindward.controller.crop.HumidityRole;
import rindward.controller.crop.HumiditySide;
import rindward.controller.crop.Keeping;
import rindward.controller.crop.Limits;
import rindward.controller.crop.RateCurve;

/**
 * Each type against figures somebody published, named beside the figure. The sources are spelled
 * out in the guide.
 */
class PublishedFiguresTest {
  private static final CropGuide GUIDE = CropGuideReader.builtIn();
  private static final long MILLIS_PER_DAY = 86_400_000L;

  @TestFactory
  List<DynamicTest> eachTypeHasAPublishedFigure() {
    return List.of(
        // General: 12.5-15 C, 2-6 months (UCD-squash); rot risk above 85 % (NCSU-HIL24C).
        figure("winter-squash", keep(Keeping::life), new Days(60, 180), "UCD-squash"),
        figure("winter-squash", keep(Keeping::rotAbove), 85_000, "NCSU-HIL24C"),
        // 5-8 weeks (ISU-fall), 1-2 months (OSU-EC1632).
        figure("acorn", keep(Keeping::life), new Days(30, 60), "OSU-EC1632"),
        figure("acorn", c -> c.noCure().map(Cited::sources), List.of("ISU-fall", "ACES")),
        // Delicata and dumpling stand under the general rule: chilled below 10 C (UDel-2020).
        figure("delicata", chilling(), 10_000, "UDel-2020"),
        // 27-30 C, 80 %, 10 days (TAMU-spag).
        figure("spaghetti", cure(Cure::temperature), new Limits(27_000, 30_000), "TAMU-spag"),
        figure("spaghetti", cure(Cure::days), new Days(10, 10), "TAMU-spag"),
        // 10-13 C (OSU-EC1632); 2-3 months (OSU-EC1632) and 3-6 months (UDel-2020), both ends.
        figure("butternut", keep(Keeping::temperature), new Limits(10_000, 13_000), "OSU-EC1632"),
        figure("butternut", keep(Keeping::life), new Days(60, 180), "UDel-2020"),
        // 2-6 months by cultivar (UCD-squash).
        figure("cheese", keep(Keeping::life), new Days(60, 180), "UCD-squash"),
        // Up to 2-3 months (UPR-calabaza).
        figure("tropical", keep(Keeping::life), new Days(60, 90), "UPR-calabaza"),
        // 3-6 months at 10-13 C (OSU-EC1632).
        figure("kabocha", keep(Keeping::life), new Days(90, 180), "OSU-EC1632"),
        // Dry matter and starch stop rising 40 days from flowering (Harvey-1997).
        figure("buttercup", c -> c.maturity().map(m -> m.ripe().value().low()), 40),
        // 3-6 months (OSU-EC1632), 5-6 months (ISU-fall): both ends.
        figure("hubbard", keep(Keeping::life), new Days(90, 180), "ISU-fall"),
        // Chilling threshold 10 C (MSU-pumpkin).
        figure("heirloom-maxima", chilling(), 10_000, "MSU-pumpkin"),
        // 10 days (ISU-pumpkin97), 10-14 days (MSU-pumpkin).
        figure("pie-pumpkin", cure(Cure::days), new Days(10, 14), "ISU-pumpkin97"),
        // 2-3 months (OSU-EC1632, MSU-pumpkin, Purdue).
        figure("carving-pumpkin", keep(Keeping::life), new Days(60, 90), "Purdue"),
        // Injured below 12.8 C (MSState), not the 10 C of others; shrink 1-2 % a month (NCSPC).
        figure("sweet-potato", chilling(), 12_800, "MSState"),
        figure("sweet-potato", keep(Keeping::shrink), new Limits(1_000, 2_000), "NCSPC"),
        // Freezes at -0.6 C (NCSU-onion), not the -0.8 C of others; 5-8 % lost (UCD-onion).
        figure("onion", keep(Keeping::freezing), -600, "NCSU-onion"),
        figure(
            "onion",
            c -> c.cure().flatMap(Cure::weightLoss).map(Cited::value),
            new Limits(5_000, 8_000)),
        // 0-2.5 C, freezes at -0.7 C (Cantwell-2001).
        figure("shallot", keep(Keeping::temperature), new Limits(0, 2_500), "Cantwell-2001"),
        figure("shallot", keep(Keeping::freezing), -700, "Cantwell-2001"),
        // Never above 43 C while curing (Cornell-garlic); mould above 70 % (WFLO-garlic).
        figure("garlic", cure(Cure::harmAbove), 43_000, "Cornell-garlic"),
        figure("garlic", keep(Keeping::rotAbove), 70_000, "WFLO-garlic"),
        // 10-15.6 C, 90-95 %, 1-3 weeks (UNL-potato).
        figure("potato", cure(Cure::humidity), new Limits(90_000, 95_000), "UNL-potato"),
        figure("potato", cure(Cure::days), new Days(7, 21), "UNL-potato"));
  }

  @Test
  void everyTypeIsAmongTheFiguresAbove() {
    assertThat(
            eachTypeHasAPublishedFigure().stream()
                .map(test -> test.getDisplayName().split(" ")[0])
                .collect(Collectors.toSet()))
        .isEqualTo(GUIDE.keys());
  }

  /** 10 days at 27-29 C (UDel-2020); 27-30 C (TAMU-spag); harm above 35 C (NCSU-HIL24C). */
  @Test
  void squashCuresInTenDaysAtTheTarget_notAtAllAt15And35() {
    Cure cure = cureOf("kabocha");
    for (int temperature : new int[] {27_000, 28_500, 30_000}) {
      assertThat(cure.femtoPerMilli(temperature, 78_000) * MILLIS_PER_DAY * 10)
          .isBetween(RateCurve.WHOLE, RateCurve.WHOLE + RateCurve.WHOLE / 500_000);
    }
    assertThat(cure.femtoPerMilli(21_000, 78_000) * MILLIS_PER_DAY * 14)
        .isBetween(RateCurve.WHOLE, RateCurve.WHOLE + RateCurve.WHOLE / 500_000);
    assertThat(cure.femtoPerMilli(15_000, 78_000)).isZero();
    assertThat(cure.femtoPerMilli(35_000, 78_000)).isZero();
  }

  /** Rot risk rises above 85 % (NCSU-HIL24C). */
  @Test
  void squashInDryAirCuresAllTheSame_inDampAirNotAtAll() {
    Cure cure = cureOf("butternut");
    assertThat(cure.femtoPerMilli(27_500, 50_000)).isEqualTo(cure.femtoPerMilli(27_500, 78_000));
    assertThat(roleAt(cure, 50_000)).contains(HumidityRole.COST);
    assertThat(cure.femtoPerMilli(27_500, 85_000)).isPositive();
    assertThat(cure.femtoPerMilli(27_500, 85_001)).isZero();
    assertThat(roleAt(cure, 85_001)).contains(HumidityRole.HAZARD);
  }

  /** Skin set still improves at 50-85 %, but weight loss rises (Blankenship-2002). */
  @Test
  void sweetPotatoCuresInPartBelow85Percent() {
    Cure cure = cureOf("sweet-potato");
    long whole = cure.femtoPerMilli(29_000, 85_000);
    assertThat(cure.femtoPerMilli(29_000, 60_000)).isPositive().isLessThan(whole);
    assertThat(roleAt(cure, 60_000)).contains(HumidityRole.GATE);
  }

  /** Field-dry at 5-8 % lost and a dry neck (UCD-onion); pathogens above 80 % (Allium-ch). */
  @Test
  void onionGarlicAndShallotCureOnlyInDryMovingAir() {
    for (String key : List.of("onion", "garlic", "shallot")) {
      Cure cure = cureOf(key);
      assertThat(cure.femtoPerMilli(30_000, 75_000)).isPositive();
      assertThat(cure.femtoPerMilli(30_000, 80_000)).isZero();
      assertThat(cure.femtoPerMilli(30_000, 30_000)).isEqualTo(cure.femtoPerMilli(30_000, 75_000));
      assertThat(cure.movingAir()).isTrue();
    }
  }

  /**
   * Healing is about three times as fast at 10 C as at 5 C, and at 20 C as at 10 C (PotRes-heal).
   */
  @Test
  void potatoHealsThreeTimesAsFastTenDegreesWarmer() {
    Cure cure = cureOf("potato");
    long at5 = cure.femtoPerMilli(5_000, 92_000);
    long at10 = cure.femtoPerMilli(10_000, 92_000);
    long at20 = cure.femtoPerMilli(20_000, 92_000);
    assertThat(at10 / (double) at5).isBetween(2.99, 3.01);
    assertThat(at20 / (double) at10).isBetween(2.99, 3.01);
  }

  /** Garlic sprouts fastest at 4.4-10 C (HB66-garlic). */
  @Test
  void garlicAgesFasterInTheColdThanInACoolRoom() {
    Crop garlic = GUIDE.crop("garlic").orElseThrow();
    assertThat(garlic.keeping().agingRate(7_000))
        .isGreaterThan(garlic.keeping().agingRate(0))
        .isGreaterThan(garlic.keeping().agingRate(15_000));
  }

  /** Halves for every ten degrees colder (NCSU-HIL24C), but cold that injures saves nothing. */
  @Test
  void squashAgesHalfAsFastTenDegreesColder_butNotBelowItsChillingThreshold() {
    Crop kabocha = GUIDE.crop("kabocha").orElseThrow();
    assertThat(kabocha.keeping().agingRate(22_500)).isEqualTo(2_000);
    assertThat(kabocha.keeping().agingRate(5_000)).isEqualTo(kabocha.keeping().agingRate(13_000));
  }

  /** Three days at 10 C, or one at 1.7 C, make hard cores (MSState). */
  @Test
  void sweetPotatoIsInjuredByThreeDaysAtTenDegrees() {
    Crop sweetPotato = GUIDE.crop("sweet-potato").orElseThrow();
    assertThat(sweetPotato.keeping().chilling().orElseThrow().doses())
        .extracting(dose -> Map.entry(dose.value().temperatureMilliC(), dose.value().days()))
        .containsExactly(Map.entry(10_000, 3), Map.entry(1_700, 1));
  }

  /** Soluble solids of 10 % are passable, 11 % good (Loy-UNH). */
  @Test
  void solubleSolidsAreMarkedAsLoyDid() {
    Crop acorn = GUIDE.crop("acorn").orElseThrow();
    assertThat(acorn.solubleSolids().orElseThrow().passable().value()).isEqualTo(10_000);
    assertThat(acorn.solubleSolids().orElseThrow().good().value()).isEqualTo(11_000);
  }

  private static Optional<HumidityRole> roleAt(Cure cure, int humidity) {
    return cure.humidityEffect().side(humidity).map(HumiditySide::role);
  }

  private static Cure cureOf(String key) {
    return GUIDE.crop(key).flatMap(Crop::cure).orElseThrow();
  }

  private static <T> Function<Crop, Optional<Cited<T>>> keep(Function<Keeping, Cited<T>> part) {
    return crop -> Optional.of(part.apply(crop.keeping()));
  }

  private static <T> Function<Crop, Optional<Cited<T>>> cure(Function<Cure, Cited<T>> part) {
    return crop -> crop.cure().map(part);
  }

  private static Function<Crop, Optional<Cited<Integer>>> chilling() {
    return crop -> crop.keeping().chilling().map(cold -> cold.threshold());
  }

  private static <T> DynamicTest figure(
      String key, Function<Crop, Optional<Cited<T>>> part, T published, String source) {
    return DynamicTest.dynamicTest(
        key + " " + published + " " + source,
        () -> {
          Cited<T> cited = part.apply(GUIDE.crop(key).orElseThrow()).orElseThrow();
          assertThat(cited.value()).isEqualTo(published);
          assertThat(cited.sources()).contains(source);
        });
  }

  private static <T> DynamicTest figure(String key, Function<Crop, Optional<T>> part, T published) {
    return DynamicTest.dynamicTest(
        key + " " + published,
        () -> assertThat(part.apply(GUIDE.crop(key).orElseThrow())).contains(published));
  }
}
