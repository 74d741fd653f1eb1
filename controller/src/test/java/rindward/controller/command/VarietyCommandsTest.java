package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From what was written down over the seasons to the verdict on a variety. */
class VarietyCommandsTest {
  @TempDir Path folder;
  private OwnFarm farm;

  @BeforeEach
  void farm() throws IOException {
    farm = OwnFarm.in(folder);
  }

  @Test
  void longSeasonType_tastedUnripe_isNotJudgedForItsTaste_andIsTooLongAfterASecondYear() {
    harvest("R7A", 2, "2025-09-24", "doubtful");
    harvest("R7C", 4, "2025-09-24", "doubtful");
    note("R7A", "--set-on", "2025-08-08");
    note("R7C", "--set-on", "2025-08-25");
    for (String lot : new String[] {"R7A", "R7C"}) {
      note(lot, "--sign", "vines-dead");
      note(lot, "--frost", "-1.5", "--minutes", "90", "--covered");
    }
    farm.done(
        "taste",
        "R7C",
        "watery",
        "--seeds",
        "flat",
        "--dry-matter",
        "13",
        "--liquid",
        "--liking",
        "2",
        "--eaten",
        "--at",
        "2025-11-23");

    assertThat(farm.done("lot", "show", "R7C"))
        .contains("verdict  unlikely ever good", "is not to blame");
    assertThat(farm.done("lot", "show", "R7A")).contains("Doubtful: cut one.");
    assertThat(farm.done("variety", "show", "Long Lantern"))
        .contains(
            "Long Lantern (heirloom-maxima): eating not judged, barely ripens here\n",
            "2025: 0 of 6 fruits ripe when picked.",
            "R7C of 2025 says nothing of its taste: most of it was unripe",
            "its vines died early")
        .doesNotContain("hurt by cold.", "Liked");

    farm.done("variety", "decide", "long lantern", "try-again", "sow in early April");
    harvest("T4A", 1, "2026-09-24", "ripe");
    harvest("T4C", 5, "2026-09-24", "green");

    assertThat(farm.done("variety", "show", "Long Lantern"))
        .contains(
            "Long Lantern (heirloom-maxima): eating not judged, too long for this site\n",
            "2026: 1 of 6 fruits ripe when picked.",
            "Decided: try again: sow in early April");
    assertThat(farm.done("variety", "show", "--json"))
        .contains("\"answer\" : \"too long for this site\"", "\"decision\" : \"try-again\"");
  }

  @Test
  void twentyFruits_mostEatenSound_keepElevenOfFourteenths() {
    Instant harvest = Instant.now().truncatedTo(ChronoUnit.SECONDS).minus(Duration.ofDays(240));
    harvest("K4T", 20, harvest.toString(), "ripe");
    for (int day : new int[] {60, 120, 210}) {
      at(harvest, day, "lot", "use", "K4T", "--count", "3");
    }
    at(harvest, 150, "lot", "cull", "K4T", "--cause", "rot");
    at(harvest, 180, "lot", "cull", "K4T", "--cause", "eaten-failing");
    at(harvest, 200, "lot", "cull", "K4T", "--cause", "rot");

    assertThat(farm.done("keep", "Long Lantern"))
        .contains("79 % keep past day 200 (")
        .contains("; 3 of 20 lost; half-life not reached by day 240.");
    assertThat(farm.done("keep", "--json")).contains("\"survival\" : 0.785714", "\"lost\" : 3");
    assertThat(farm.done("variety", "show")).contains("Provisional: 8 fruits are still kept.");
  }

  @Test
  void threeFruits_areNamed_andAnAccidentOrARecountIsNoLoss() {
    Instant harvest = Instant.now().truncatedTo(ChronoUnit.SECONDS).minus(Duration.ofDays(120));
    harvest("K4T", 3, harvest.toString(), "ripe");
    at(harvest, 30, "lot", "weigh", "K4T", "--fruit", "tag 1", "--weight", "1400g");
    at(harvest, 60, "lot", "weigh", "K4T", "--fruit", "tag 1", "--weight", "1386g");
    at(harvest, 90, "lot", "cull", "K4T", "--cause", "animals");

    assertThat(farm.done("keep", "long lantern"))
        .isEqualTo(
            "Long Lantern (heirloom-maxima)\n"
                + "  2 of 3 sound on day 120, 1 lost by accident.\n"
                + "  Loses 1.0 % of its weight in 30 days, by two weighings; a third would tell how"
                + " sure that is.\n");

    at(harvest, 100, "lot", "recount", "K4T", "--count", "1");
    assertThat(farm.done("keep")).contains("1 of 3 sound on day 120", "1 unaccounted for");
    at(harvest, 110, "lot", "recount", "K4T", "--count", "2");
    assertThat(farm.done("keep")).contains("2 of 3 sound on day 120, 1 lost by accident.");
  }

  @Test
  void besideTheCheckOfItsClass_tasteAndKeepingAreCompared_andHurtLotsLeftOut() throws IOException {
    Path plan =
        Files.writeString(
            folder.resolve("plan.csv"),
            "kind,at,plot,lot,crop,variety,check,plants\n"
                + "planted,2026-04-01,P1,K4T,kabocha,Winterglut,yes,6\n"
                + "planted,2026-04-01,P2,R7A,kabocha,Frostgate,no,6\n"
                + "planted,2026-04-01,P2,R7C,kabocha,Frostgate,no,6\n"
                + "planted,2026-04-01,P3,A3A,acorn,Green Pleat,yes,6\n");
    farm.done("lot", "import", plan.toString());
    Instant harvest = Instant.now().truncatedTo(ChronoUnit.SECONDS).minus(Duration.ofDays(90));
    for (String lot : new String[] {"K4T", "R7A", "R7C", "A3A"}) {
      at(harvest, 0, "lot", "add", lot, "--place", "porch", "--count", "10", "--grade", "ripe");
    }
    farm.done("lot", "note", "R7C", "--frost", "-4", "--minutes", "90", "--water-soaked");
    at(harvest, 30, "lot", "cull", "K4T", "--cause", "rot", "--count", "6");
    panel("first", "R7A", 8);

    assertThat(farm.done("variety", "show", "Frostgate"))
        .contains(
            "Frostgate (kabocha): liked as well as Winterglut (the check), ripens here\n",
            "R7C of "
                + harvest.atZone(ZoneOffset.UTC).getYear()
                + " says nothing of its taste:"
                + " hurt by cold.",
            "Unripe, off type or hurt by cold, and left out: R7C.",
            "more than Winterglut (the check): between",
            "as it was grown here once",
            "With one lot each, these lots differed; of the varieties Frostgate and Winterglut (the"
                + " check) nothing can be said.")
        .doesNotContain("Green Pleat");

    panel("second", "R7A:2+3", 7);
    assertThat(farm.done("variety", "show", "Frostgate"))
        .contains(
            "Frostgate (kabocha): probably liked better than Winterglut (the check), ripens",
            "It rests on 3 fruits of 1 lot, 6 tasters, 2 sessions and 0 kitchen tastes.");
  }

  /** Six tasters who all like the sample so much and the check 5. */
  private void panel(String name, String sample, int liking) {
    List<String> plan = new ArrayList<>(List.of("panel", "plan", name, "--check", "K4T"));
    plan.addAll(List.of("--sample", "K4T", "--sample", sample));
    for (int taster = 1; taster <= 6; taster++) {
      plan.addAll(List.of("--taster", "taster " + taster));
    }
    farm.done(plan.toArray(String[]::new));
    for (int taster = 1; taster <= 6; taster++) {
      Matcher row =
          Pattern.compile("<td>taster " + taster + "</td>(.*)")
              .matcher(farm.done("panel", "sheet", name, "--cook"));
      assertThat(row.find()).isTrue();
      Matcher cup = Pattern.compile("<b>(\\d{3})</b> ([^<]*)").matcher(row.group(1));
      while (cup.find()) {
        String answer = "liking=" + (cup.group(2).equals(sample) ? liking : 5);
        farm.done(
            "panel", "score", name, "--taster", "taster " + taster, "--cup", cup.group(1), answer);
      }
    }
    farm.done("panel", "close", name, "--as-planned");
  }

  @Test
  void unknownVariety_isRefused() {
    assertThat(farm.refused("variety", "show", "Nobody"))
        .contains("VARIETY was 'Nobody' but no lot of that variety came in");
    harvest("K4T", 3, "2025-09-24", "ripe");
    assertThat(farm.refused("variety", "decide", "Long Lantern", "try-again"))
        .contains("reason was empty but say how it is to be tried again");
    assertThat(farm.refused("variety", "decide", "Long Lantern", "growagain"))
        .contains("it must be one of grow-again, try-again, drop, but it was 'growagain'")
        .doesNotContain("GROW_AGAIN");
    assertThat(farm.done("variety", "decide", "Long Lantern", "Grow-Again")).contains("grow again");
  }

  private void harvest(String code, int count, String at, String grade) {
    farm.done(
        "lot",
        "add",
        code,
        "--crop",
        "heirloom-maxima",
        "--variety",
        "Long Lantern",
        "--place",
        "porch",
        "--count",
        "" + count,
        "--grade",
        grade,
        "--at",
        at);
  }

  private void note(String code, String... what) {
    String[] args = new String[what.length + 5];
    System.arraycopy(new String[] {"lot", "note", code, "--at", "2025-09-24"}, 0, args, 0, 5);
    System.arraycopy(what, 0, args, 5, what.length);
    farm.done(args);
  }

  private void at(Instant harvest, int day, String... command) {
    String[] args = new String[command.length + 2];
    System.arraycopy(command, 0, args, 0, command.length);
    args[command.length] = "--at";
    args[command.length + 1] = harvest.plus(Duration.ofDays(day)).toString();
    farm.done(args);
  }
}
