package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;

class CropGuideTest {
  private static final CropGuide GUIDE = CropGuideReader.builtIn();

  @Test
  void everyTypeOfTheTrialIsThere() {
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
    assertThat(GUIDE.crop("dumpling")).map(Crop::key).contains("delicata");
    assertThat(GUIDE.crop("butternt")).isEmpty();
    assertThat(GUIDE.nearest("butternt")).contains("butternut");
    assertThat(GUIDE.nearest("dumplign")).contains("dumpling");
    assertThat(GUIDE.nearest("walnut tree")).isEmpty();
  }
}
