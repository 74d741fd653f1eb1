package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rindward.controller.crop.CropGuide;

/** Each file is named by its flaw and told in exactly these sentences. */
class BadCropFilesTest {
  private static final CropGuide GUIDE = CropGuideReader.builtIn();

  @TestFactory
  List<DynamicTest> eachFlawHasItsSentence() {
    return List.of(
        flaw(
            "alias-twice",
            "shed.toml:4:1: crops.lantern.aliases was '[\"lamp\", \"lamp\"]' but no name may "
                + "come twice, nor the type's own key"),
        flaw(
            "chilling-below-freezing",
            "shed.toml:2:1: crops.butternut.keep.chilling.threshold was '-2' but it must "
                + "not lie below freezing, -0.8"),
        flaw(
            "cure-target-earns-nothing",
            "shed.toml:2:1: crops.kabocha.cure.temperature was '[5, 14]' but it must lie "
                + "where the rate is not \"never\""),
        flaw(
            "dry-limit-above-damp-limit",
            "shed.toml:2:9: crops.kabocha.cure.dry.limit was '90' but it must not be above "
                + "the damp limit, 85"),
        flaw(
            "gate-without-factor",
            "shed.toml:1:1: crops.kabocha.cure.dry.factor is missing but it must be a "
                + "number from 0 to 1"),
        flaw(
            "harm-below-target",
            "shed.toml:1:1: crops.kabocha.cure.temperature was '[27, 29]' but it must end "
                + "at or below harm-above, 28",
            "shed.toml:2:1: crops.kabocha.cure.harm-above was '28' but it must not lie "
                + "below a point of the rate that is not \"never\""),
        flaw(
            "key-with-capitals",
            "shed.toml:1:1: crops.Lantern was 'Lantern' but it must be lower-case letters, "
                + "digits and hyphens, like 'pie-pumpkin'"),
        flaw(
            "life-upside-down",
            "shed.toml:2:1: crops.butternut.keep.life was '[180, 60]' but it must be two "
                + "whole numbers of days from 0 to 1000, the lower one first"),
        flaw(
            "like-unknown-type",
            "shed.toml:2:1: crops.lantern.like was 'carving-pumkin' but it must be a type "
                + "that stands before this one; did you mean 'carving-pumpkin'?"),
        flaw(
            "name-taken",
            "shed.toml:4:1: crops.lantern.aliases was 'turban' but it must not be a name "
                + "that 'buttercup' has already"),
        flaw(
            "new-type-incomplete",
            "shed.toml:6:1: crops.yam.keep.reference is missing but it must be a number "
                + "from -40 to 60",
            "shed.toml:6:1: crops.yam.keep.q10 is missing but it must be a number from 1 "
                + "to 5, or else aging must be a list",
            "shed.toml:6:1: crops.yam.keep.shrink is missing but it must be two numbers "
                + "from 0 to 100, the lower one first"),
        flaw(
            "phase-ends-before-it-begins",
            "shed.toml:5:1: crops.kabocha.eating[1].ends was '[10, 60]' but neither end "
                + "may come before the same end of begins"),
        flaw(
            "q10-beside-aging",
            "shed.toml:3:1: crops.kabocha.keep.aging stood beside q10 but it must be one "
                + "or the other"),
        flaw(
            "rate-out-of-order",
            "shed.toml:4:5: crops.kabocha.cure.rate[2].at was '20' but it must be warmer "
                + "than the point before it"),
        flaw(
            "several-problems",
            "shed.toml:2:1: crops.butternut.groop is not a key known here; did you mean "
                + "'group'?",
            "shed.toml:5:1: crops.butternut.keep.temperature was '[\"10\", 13]' but it must "
                + "be two numbers from -40 to 60, the lower one first",
            "shed.toml:6:1: crops.butternut.keep.upper was '90' but it must be a number "
                + "from -40 to 60",
            "shed.toml:9:1: crops.onion.cure.moving-air was 'yes' but it must be true or "
                + "false"),
        flaw(
            "storage-below-chilling",
            "shed.toml:2:1: crops.sweet-potato.keep.temperature was '10' but it must not "
                + "begin below the chilling threshold, 12.8"),
        flaw(
            "unknown-source",
            "shed.toml:2:29: crops.butternut.keep.life.source named 'OSU-EC1623' but it "
                + "must be a key of [sources]; did you mean 'OSU-EC1632'?"));
  }

  @Test
  void aNumberOfTheGuideWithoutASource_isTold() throws IOException {
    Problems problems = new Problems();
    CropGuideReader.read("guide.toml", text("guide-number-without-source"), problems);
    assertThat(problems.list().stream().map(Problem::toString))
        .containsExactly(
            "guide.toml:7:1: yam.keep.temperature was '[14, 16]' but it must name its "
                + "source: { value = ..., source = [\"...\"] }",
            "guide.toml:8:1: yam.keep.humidity.source is missing but it must name at least "
                + "one key of [sources]",
            "guide.toml:10:27: yam.keep.reference.source named 'own settings' but it must "
                + "be a key of [sources]");
  }

  private static DynamicTest flaw(String name, String... sentences) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          Problems problems = new Problems();
          TableReader settings =
              TableReader.of("shed.toml", text("crops-" + name), problems).orElseThrow();
          CropGuide guide = CropGuideReader.withOwn(GUIDE, settings.table("crops").orElseThrow());
          assertThat(problems.list().stream().map(Problem::toString)).containsExactly(sentences);
          assertThat(guide.crops()).isEqualTo(GUIDE.crops());
        });
  }

  private static String text(String name) throws IOException {
    try (var in = BadCropFilesTest.class.getResourceAsStream(name + ".toml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
