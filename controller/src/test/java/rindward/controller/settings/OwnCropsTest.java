package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Days;
import rindward.controller.crop.Limits;
import rindward.controller.crop.SpeciesGroup;

class OwnCropsTest {
  private static final CropGuide GUIDE = CropGuideReader.builtIn();

  @Test
  void anOverrideChangesOnlyWhatItNames() {
    Crop own = own("[crops.butternut.keep]\nlife = [90, 150]\n").crop("butternut").orElseThrow();
    Crop known = GUIDE.crop("butternut").orElseThrow();
    assertThat(own.keeping().life())
        .isEqualTo(new Cited<>(new Days(90, 150), List.of("own settings")));
    assertThat(own.keeping().temperature()).isEqualTo(known.keeping().temperature());
    assertThat(own.cure()).isEqualTo(known.cure());
    assertThat(own.phases()).isEqualTo(known.phases());
    assertThat(own.aliases()).isEqualTo(known.aliases());
  }

  @Test
  void anOverrideLeavesTheOtherTypesAlone() {
    CropGuide own = own("[crops.kabocha.keep]\nlife = [10, 20]\n");
    assertThat(own.crop("buttercup")).isEqualTo(GUIDE.crop("buttercup"));
    assertThat(own.keys()).isEqualTo(GUIDE.keys());
  }

  @Test
  void aNewTypeIsLikeAKnownOne() {
    Crop own =
        own("""
        [crops.lantern]
        like = "kabocha"
        name = "lantern squash"
        aliases = ["lamp"]

        [crops.lantern.keep]
        temperature = [11, 12]
        """)
            .crop("lamp")
            .orElseThrow();
    assertThat(own.key()).isEqualTo("lantern");
    assertThat(own.name()).isEqualTo("lantern squash");
    assertThat(own.group()).isEqualTo(SpeciesGroup.MAXIMA);
    assertThat(own.keeping().temperature().value()).isEqualTo(new Limits(11_000, 12_000));
    assertThat(own.cure()).isEqualTo(GUIDE.crop("kabocha").orElseThrow().cure());
  }

  @Test
  void theGrowersOwnSourcesMayBeNamed() {
    CropGuide own =
        own(
            """
            [crops.sources]
            notebook = "Hollin Bank Farm, notebook of 2024"

            [crops.onion.keep]
            life = { value = [120, 200], source = ["notebook", "UCD-onion"] }
            """);
    assertThat(own.crop("onion").orElseThrow().keeping().life().sources())
        .containsExactly("notebook", "UCD-onion");
    assertThat(own.sources().title("notebook")).contains("Hollin Bank Farm, notebook of 2024");
  }

  @Test
  void acornMayBeGivenACureAndKabochaNone() {
    CropGuide own =
        own(
            """
            [crops.kabocha]
            no-cure = "We do not cure it here."

            [crops.small-acorn]
            like = "winter-squash"
            name = "small acorn"
            """);
    assertThat(own.crop("kabocha").orElseThrow().cure()).isEmpty();
    assertThat(own.crop("kabocha").orElseThrow().noCure())
        .contains(new Cited<>("We do not cure it here.", List.of("own settings")));
    assertThat(own.crop("small-acorn").orElseThrow().cure()).isPresent();
  }

  private static CropGuide own(String text) {
    Problems problems = new Problems();
    TableReader settings = TableReader.of("shed.toml", text, problems).orElseThrow();
    CropGuide guide = CropGuideReader.withOwn(GUIDE, settings.table("crops").orElseThrow());
    assertThat(problems.list()).isEmpty();
    return guide;
  }
}
