package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A finding that can make people ill stops its lot at once, whoever made it and however. */
class HarmCommandsTest {
  private static final String STOP =
      "Do not eat. Spit it out; cooking does not make it safe; feed it to no animal.";

  @TempDir Path folder;
  private OwnFarm farm;

  @BeforeEach
  void lots() throws IOException {
    farm = OwnFarm.in(folder);
    add("A3A", "kabocha");
    add("C3C", "kabocha");
    add("ON1", "onion");
    add("PO1", "potato");
    assertThat(farm.done("eat")).contains("A3A", "C3C");
  }

  @Test
  void aCupFoundBitterWhileTheSessionRuns_stopsItsLotAtOnce() {
    plan("winter");

    score("winter", "A3A", "bitter=1");

    assertStopped("A3A");
    assertThat(farm.done("eat")).contains("C3C");
  }

  @Test
  void aCupFoundBitter_stopsItsLotOnceTheSessionIsClosedToo() {
    plan("winter");
    score("winter", "A3A", "bitter=1");
    score("winter", "C3C", "liking=7");
    farm.done("panel", "close", "winter", "--fruits-not-known");

    assertStopped("A3A");
  }

  @Test
  void aTasteInTheKitchen_canSayBitter_andStopsTheLot() {
    assertThat(farm.done("taste", "A3A", "--found", "bitter", "--fruit", "tag 4")).contains(STOP);

    assertStopped("A3A");
    assertThat(farm.done("lot", "show", "A3A")).contains("Fruit tag 4 was bitter");
  }

  @Test
  void aCooksNoteOfABitterFruit_stopsTheLot() {
    plan("winter");

    farm.done("panel", "cook", "winter", "A3A", "--found", "bitter");

    assertStopped("A3A");
  }

  @Test
  void aStoppedLot_isRefusedWhenASessionIsPlanned() {
    farm.done("taste", "A3A", "--found", "bitter");

    assertThat(
            farm.refused(
                "panel", "plan", "next", "--sample", "A3A", "--sample", "C3C", "--taster", "Wren"))
        .contains("lot was 'A3A' but it is stopped: Do not eat");
  }

  @Test
  void onlyTheOwnerLiftsAStop_withAReason_andWhatIsFoundLaterStopsItAgain() {
    farm.done("taste", "A3A", "--found", "bitter");
    assertThat(farm.refused("lot", "lift", "A3A", " ")).contains("say why it may be eaten");
    assertThat(farm.refused("lot", "lift", "C3C", "no")).contains("nothing harmful was found");

    farm.done("lot", "lift", "A3A", "it was a gourd from next door");
    assertThat(farm.done("eat")).contains("A3A");
    assertThat(farm.done("lot", "show", "A3A"))
        .contains("it was a gourd from next door")
        .doesNotContain("verdict  do not eat");

    farm.done("taste", "A3A", "--found", "bitter");
    assertStopped("A3A");
  }

  @Test
  void aLiftIsTakenBackLikeAnyEntry() {
    farm.done("taste", "A3A", "--found", "bitter");
    farm.done("lot", "lift", "A3A", "tasted again: sweet");
    farm.done("lot", "undo", "A3A");

    assertStopped("A3A");
  }

  @Test
  void sistersOfTheSameSeedOrPlot_areToBeTouchedWithTheTongueFirst_andTheirSeedIsSuspectToo() {
    add("A4A", "kabocha", "Number A3A", "P9");
    add("BN1", "butternut", "Fallow Bell", "P3");
    add("BN2", "butternut", "Fallow Bell", "P4");
    add("K9K", "kabocha", "Number K9K", "P4");
    farm.done("taste", "BN2", "--found", "bitter");
    farm.done("taste", "A3A", "--found", "bitter");

    for (String sister : List.of("A4A", "BN1", "K9K")) {
      assertThat(farm.done("lot", "show", sister))
          .contains("touch the flesh with the tongue and spit", "Do not sow or give away seed")
          .doesNotContain("verdict  do not eat");
    }
    assertThat(farm.done("lot", "show", "C3C")).doesNotContain("touch the flesh");
    assertThat(farm.done("lot", "show", "ON1")).doesNotContain("touch the flesh");
  }

  @Test
  void theVarietyAndTheOrderSheet_showIt() {
    farm.done("taste", "A3A", "--found", "bitter");

    assertThat(farm.done("variety", "show", "number a3a")).contains("DO NOT EAT", "A3A", STOP);
    assertThat(farm.done("variety", "order")).contains("DO NOT EAT", "from other seed, if at all");
  }

  @Test
  void aPotatoThatIsGreen_isStoppedForItsOwnReason() {
    farm.done("taste", "PO1", "--found", "green");

    assertThat(farm.done("lot", "show", "PO1")).contains("do not eat", "solanine");
    assertThat(farm.done("eat")).doesNotContain("PO1");
  }

  @Test
  void aBitterOnion_isAMatterOfTaste() {
    farm.done("taste", "ON1", "--found", "bitter");

    assertThat(farm.done("lot", "show", "ON1")).doesNotContain("do not eat").contains("bitter");
    assertThat(farm.done("eat")).contains("ON1");
  }

  private void assertStopped(String lot) {
    assertThat(farm.done("eat")).doesNotContain(lot);
    assertThat(farm.done("lot", "show", lot)).contains("verdict  do not eat", STOP);
    assertThat(farm.done("lot", "list")).contains("DO NOT EAT: bitter");
    assertThat(farm.done("lot", "list", "--json", "--verdicts")).contains("\"do not eat\"");
  }

  private void add(String lot, String crop) {
    add(lot, crop, "Number " + lot, "plot of " + lot);
  }

  private void add(String lot, String crop, String variety, String plot) {
    farm.done(
        "lot",
        "add",
        lot,
        "--crop",
        crop,
        "--variety",
        variety,
        "--plot",
        plot,
        "--place",
        "porch",
        "--count",
        "3",
        "--grade",
        "ripe",
        "--at",
        Instant.now().minus(Duration.ofDays(70)).toString());
  }

  private void plan(String name) {
    farm.done(
        "panel",
        "plan",
        name,
        "--sample",
        "A3A",
        "--sample",
        "C3C",
        "--taster",
        "Wren",
        "--taster",
        "Ash");
  }

  private void score(String session, String sample, String answer) {
    Matcher cup =
        Pattern.compile("<td>Wren</td>.*?<b>(\\d{3})</b> " + sample + "<")
            .matcher(farm.done("panel", "sheet", session, "--cook"));
    assertThat(cup.find()).isTrue();
    farm.done("panel", "score", session, "--taster", "Wren", "--cup", cup.group(1), answer);
  }
}
