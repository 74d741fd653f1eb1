package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.RateCurve;
import rindward.controller.crop.Sources;

class CropGuideTest {
  private static final CropGuide GUIDE = CropGuideReader.builtIn();

  @Test
  void everyTypeIsThere() {
    assertThat(GUIDE.keys())
        .containsExactly(
            "acorn",
            "buttercup",
            "butternut",
            "carving-pumpkin",
            "cheese",
            "delicata",
            "garlic",
            "heirloom-maxima",
            "hubbard",
            "kabocha",
            "onion",
            "pie-pumpkin",
            "potato",
            "shallot",
            "spaghetti",
            "sweet-potato",
            "tropical",
            "winter-squash");
  }

  @Test
  void aliasesAndTyposFindTheirType() {
    assertThat(List.of("dumpling", "neck", "turban", "banana"))
        .extracting(alias -> GUIDE.crop(alias).map(Crop::key).orElse("none"))
        .containsExactly("delicata", "cheese", "buttercup", "hubbard");
    assertThat(GUIDE.crop("butternt")).isEmpty();
    assertThat(GUIDE.nearest("butternt")).contains("butternut");
    assertThat(GUIDE.nearest("dumplign")).contains("dumpling");
    assertThat(GUIDE.nearest("walnut tree")).isEmpty();
  }

  @TestFactory
  List<DynamicTest> everyNumberHasASourceThatExists() {
    return GUIDE.crops().stream()
        .map(
            crop ->
                DynamicTest.dynamicTest(
                    crop.key(),
                    () -> {
                      List<Cited<?>> cited = new ArrayList<>();
                      List<String> bare = new ArrayList<>();
                      walk(crop.key(), crop, cited, bare);
                      assertThat(bare).as("numbers without a source").isEmpty();
                      assertThat(cited).hasSizeGreaterThan(15);
                      assertThat(cited)
                          .allSatisfy(
                              one ->
                                  assertThat(one.sources())
                                      .isNotEmpty()
                                      .allMatch(key -> GUIDE.sources().title(key).isPresent()));
                    }))
        .toList();
  }

  @Test
  void everyListedSourceIsUsed() {
    Set<String> used = new HashSet<>();
    for (Crop crop : GUIDE.crops()) {
      List<Cited<?>> cited = new ArrayList<>();
      walk(crop.key(), crop, cited, new ArrayList<>());
      cited.forEach(one -> used.addAll(one.sources()));
    }
    assertThat(used).containsAll(GUIDE.sources().titles().keySet());
  }

  @Test
  void aNumberWithoutAPublicationSaysSo() {
    assertThat(GUIDE.sources().title("common practice"))
        .contains("Common practice, no published source");
    assertThat(GUIDE.sources().title(Sources.FROM_MEMORY))
        .contains("From memory, not found in a source");
  }

  /** Collects every cited value below {@code part}, and the path of each number that is not. */
  private static void walk(String path, Object part, List<Cited<?>> cited, List<String> bare) {
    if (part instanceof Cited<?> one) {
      cited.add(one);
    } else if (part instanceof Number) {
      bare.add(path);
    } else if (part instanceof Optional<?> maybe) {
      maybe.ifPresent(inner -> walk(path, inner, cited, bare));
    } else if (part instanceof Collection<?> several) {
      several.forEach(inner -> walk(path, inner, cited, bare));
    } else if (part instanceof RateCurve curve) {
      cited.addAll(curve.points());
    } else if (part.getClass().isRecord()) {
      for (RecordComponent component : part.getClass().getRecordComponents()) {
        walk(path + "." + component.getName(), valueOf(component, part), cited, bare);
      }
    }
  }

  private static Object valueOf(RecordComponent component, Object owner) {
    try {
      return component.getAccessor().invoke(owner);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(component + " could not be read", e);
    }
  }
}
