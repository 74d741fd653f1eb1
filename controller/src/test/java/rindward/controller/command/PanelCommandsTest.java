package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import rindward.controller.tasting.design.Caution;

/** A tasting from its plan to its results, as a grower types it. */
class PanelCommandsTest {
  private static final List<String> LOTS = List.of("A3A", "C3C", "E3E", "F3F", "H3H", "J3J", "K3K");

  /** Three tasters of seven samples, an invented trial with an exact result. */
  private static final int[][] LIKING = {
    {8, 8, 7, 6, 6, 5, 3}, {7, 8, 6, 7, 5, 6, 4}, {8, 7, 7, 5, 6, 4, 3}
  };

  private static final List<String> TASTERS = List.of("Wren", "Ash", "Rowan");

  @TempDir Path folder;
  private OwnFarm farm;
  private Instant now;

  @BeforeEach
  void lots() throws IOException {
    farm = OwnFarm.in(folder);
    now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
    for (String lot : LOTS) {
      farm.done(
          "lot",
          "add",
          lot,
          "--crop",
          "kabocha",
          "--variety",
          "Number " + lot,
          "--place",
          "porch",
          "--count",
          "3",
          "--grade",
          "ripe",
          "--at",
          now.minus(Duration.ofDays(90)).toString());
    }
  }

  @Test
  void aSession_isPlannedScoredClosedAndJudged() {
    plan();
    for (int taster = 0; taster < TASTERS.size(); taster++) {
      for (int sample = 0; sample < LOTS.size(); sample++) {
        score(TASTERS.get(taster), LOTS.get(sample), "liking=" + LIKING[taster][sample]);
      }
    }
    assertThat(farm.refused("panel", "results", "winter"))
        .contains("its codes stay shut until then");

    assertThat(farm.refused("panel", "close", "winter"))
        .contains("nobody said which fruits were cooked for", "--as-planned", "--fruits-not-known");
    farm.done("panel", "close", "winter", "--as-planned");

    assertThat(farm.done("panel", "results", "winter"))
        .contains(
            "A3A  kabocha Number A3A, 1 fruit",
            "overall liking, go 1",
            "A3A and C3C are liked better than K3K. Between any two others it may be chance.",
            "A3A      mean 7.7 (6.2 to 9.0)\n",
            "J3J      mean 5.0 (2.5 to 7.5)\n",
            "One fruit each: early impression.",
            "how this was worked out: overall liking, go 1\n"
                + "  Exact p 0.000736: 2338 of 3,175,200 arrangements of the mid-ranks, one"
                + " panelist held.");
    assertThat(farm.done("panel", "results", "winter", "--json"))
        .contains("\"rankSum\" : 9.5", "\"p\" : 7.363");
    assertThat(farm.done("variety", "show", "number a3a"))
        .contains(
            "Number A3A (kabocha): liked as well as your own average of its type (kabocha)",
            "11 fruits more in six sessions would settle it.");
    assertThat(
            farm.refused("panel", "score", "winter", "--taster", "Wren", "--cup", "417", "raw=1"))
        .contains("it was closed at");
  }

  @Test
  void tastersSheets_carryTheCautions_andTellNothingOfWhatIsInACup() {
    plan();

    for (String sheets :
        List.of(
            farm.done("panel", "sheet", "winter"),
            farm.done("panel", "sheet", "winter", "--json"),
            farm.done("panel", "sheet", "winter", "--taster", "Ash"))) {
      assertThat(sheets).doesNotContain("kabocha", "Number").doesNotContain(LOTS);
      for (Caution caution : Caution.values()) {
        assertThat(sheets.replace("&#39;", "'")).contains(caution.sentence());
      }
    }
    assertThat(farm.done("panel", "sheet", "winter", "--cook"))
        .contains("A3A", "Keep it away from the tasters", "baked, at 190 C");
  }

  @Test
  void cooking_takesTheFruitOutOfItsLot_andNotesItsSeeds() {
    plan();

    assertThat(
            farm.done(
                "panel",
                "cook",
                "winter",
                "A3A",
                "--weight",
                "1.4kg",
                "--seeds",
                "flat",
                "--minutes",
                "45",
                "--liquid"))
        .contains("A3A  kabocha Number A3A, ripe, in porch: 2 of 3 sound, 1 used");
    assertThat(farm.done("lot", "show", "A3A")).contains("One fruit was cut, and it was not ripe");
    assertThat(farm.refused("panel", "cook", "winter", "A3A", "--fruit", "9"))
        .contains("fruit was '9' but it must be one of [1]");
  }

  @Test
  void undo_ofACookedFruit_putsItBackIntoItsLot() {
    plan();
    farm.done("panel", "cook", "winter", "A3A", "--minutes", "45");

    assertThat(farm.done("panel", "undo", "winter")).contains("Taken back: 1 entry.");

    assertThat(farm.done("lot", "show", "A3A")).contains("3 of 3 sound");
    assertThat(farm.done("panel", "cook", "winter", "A3A", "--minutes", "50"))
        .contains("2 of 3 sound, 1 used");
  }

  @Test
  void score_ofABitterCup_tellsWhatToDo_andWrongOnesAreRefused() {
    plan();

    assertThat(score("Wren", "A3A", "bitter=1")).contains("Do not swallow");
    assertThat(
            farm.refused("panel", "score", "winter", "--taster", "Wren", "--cup", "417", "yum=1"))
        .contains("the question was 'yum' but it must be one of liking, sweetness");
    assertThat(
            farm.refused(
                "panel",
                "score",
                "winter",
                "--taster",
                "Wren",
                "--cup",
                code("Wren", "A3A"),
                "liking=10"))
        .contains("liking was '10' but it must be 1 (dislike extremely) to 9 (like extremely)");
    assertThat(farm.refused("panel", "plan", "spring", "--sample", "X9X", "--taster", "Wren"))
        .contains("there is no lot of that code");
  }

  @Test
  void taste_isKeptWithItsLot_andSaysThatItIsNotBlind() {
    assertThat(
            farm.done(
                "taste",
                "A3A",
                "chestnuts",
                "--liking",
                "8",
                "--seeds",
                "full",
                "--good-for",
                "pie,soup",
                "--eaten"))
        .contains("2 of 3 sound, 1 used", "Not blind");
    assertThat(farm.done("lot", "show", "A3A"))
        .contains("kitchen-taste", "liking=8", "good_for=pie soup", "seeds=full", "note=chestnuts");
    assertThat(farm.refused("taste", "A3A")).contains("the taste was empty");
  }

  @Test
  void everyCommandOfPanels_explainsItselfWithAnExample() {
    for (String group : List.of("panel", "variety")) {
      CommandLine command = Main.commandLine().getSubcommands().get(group);
      for (String name : command.getSubcommands().keySet()) {
        CommandRun run = CommandRun.of(group, name, "--help");
        assertThat(run.exit()).isZero();
        assertThat(run.out())
            .contains("Example", "  rindward " + group + " " + name + " --settings");
      }
    }
  }

  private void plan() {
    farm.done(
        "panel",
        "plan",
        "winter",
        "--cups",
        "8",
        "--method",
        "baked",
        "--oven",
        "190",
        "--sample",
        "A3A",
        "--sample",
        "C3C",
        "--sample",
        "E3E",
        "--sample",
        "F3F",
        "--sample",
        "H3H",
        "--sample",
        "J3J",
        "--sample",
        "K3K",
        "--taster",
        "Wren",
        "--taster",
        "Ash",
        "--taster",
        "Rowan");
  }

  private String score(String taster, String sample, String answer) {
    return farm.done(
        "panel", "score", "winter", "--taster", taster, "--cup", code(taster, sample), answer);
  }

  /** Returns the code on a cup, as the cook's sheet tells it. */
  private String code(String taster, String sample) {
    Matcher row =
        Pattern.compile("<td>" + taster + "</td>.*?<b>(\\d{3})</b> " + sample + "<")
            .matcher(farm.done("panel", "sheet", "winter", "--cook"));
    assertThat(row.find()).isTrue();
    return row.group(1);
  }
}
