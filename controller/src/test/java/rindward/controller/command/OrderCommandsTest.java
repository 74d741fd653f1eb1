package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the plan in spring to the order sheet in winter. */
class OrderCommandsTest {
  @TempDir Path folder;
  private OwnFarm farm;

  @BeforeEach
  void season() throws IOException {
    farm = OwnFarm.in(folder);
    Files.writeString(
        folder.resolve("plan.csv"),
        "kind,lot,at,plot,crop,variety,check,plants,sown\n"
            + "planted,K4T,2025-04-01,P1,kabocha,Winterglut,yes,4,2025-04-20\n"
            + "planted,R7A,2025-04-01,P2,kabocha,<b>Frost & Gate</b>,no,2,2025-04-20\n");
    farm.done("lot", "import", folder.resolve("plan.csv").toString());
    add("K4T", "Winterglut", "--count", "12", "--weight", "18");
    add("R7A", "<b>Frost & Gate</b>", "--count", "9");
    taste("K4T", "2025-12-01", 8);
    cull("K4T", "2026-03-20", 6);
    cull("R7A", "2025-12-10", 2);
  }

  @Test
  void order_ofAnEarlierDay_standsAsItDidThen_andTellsWhatTheKeepersShowedSince() {
    farm.done("variety", "decide", "winterglut", "grow-again", "steady");

    String sheet = farm.done("variety", "order", "--date", "2026-01-15");

    assertThat(sheet)
        .contains(
            "Grow again\n  Winterglut (kabocha): steady\n",
            "Provisional: 11 fruits are still kept.",
            "Since then: ",
            "Nobody can say yet\n  <b>Frost & Gate</b> (kabocha): That three in four are ripe");
    assertThat(farm.done("variety", "order", "--csv"))
        .startsWith("crop,variety,decision,decided,")
        .contains("kabocha,Winterglut,grow-again,yes,steady,");
  }

  @Test
  void report_isOnePage_withNothingFetchedAndNothingTypedLeftRaw() throws IOException {
    Path file = folder.resolve("report.html");
    farm.done("variety", "report", "--out", file.toString());

    String html = Files.readString(file);
    assertThat(html)
        .contains(
            "&lt;b&gt;Frost &amp; Gate&lt;/b&gt;",
            "2025: 12 fruits, 18.0 kg, of 4 plants: 3.0 fruits and 4.5 kg a plant.",
            "<path class=\"curve\"")
        .doesNotContain("<b>Frost", "src=", "href=", "<script", "http");
    assertThat(farm.done("variety", "report", "--csv"))
        .contains("kabocha,Winterglut,ripens here,12");
  }

  @Test
  void bringIn_namesWhatIsStillInTheField() {
    farm.done(
        "lot", "import", plan("planted,T4A,2026-04-01,P9,kabocha,Old Thimble,no,3,2026-04-20\n"));
    farm.done("lot", "note", "T4A", "--set-on", "2026-08-01", "--at", "2026-08-02");
    farm.done("lot", "note", "T4A", "hail in July");

    assertThat(farm.done("lot", "bring-in", "--low", "-2"))
        .startsWith("1. T4A  kabocha Old Thimble, plot P9, 3 plants\n     Ripe: ")
        .contains("-2.0 C kills the vines");
    assertThat(farm.done("lot", "show", "T4A")).contains("planned in plot P9", "hail in July");
    assertThat(farm.refused("lot", "bring-in")).contains("--low was not given");
    assertThat(farm.refused("lot", "bring-in", "--low", "70")).contains("-40 to 40 degrees C");
  }

  private String plan(String line) {
    try {
      Path file = folder.resolve("more.csv");
      Files.writeString(file, "kind,lot,at,plot,crop,variety,check,plants,sown\n" + line);
      return file.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void add(String code, String variety, String... more) {
    List<String> typed =
        new ArrayList<>(
            List.of(
                "lot",
                "add",
                code,
                "--crop",
                "kabocha",
                "--variety",
                variety,
                "--place",
                "porch",
                "--grade",
                "ripe",
                "--at",
                "2025-09-20"));
    typed.addAll(List.of(more));
    farm.done(typed.toArray(String[]::new));
    farm.done("lot", "attest", code, "stem dry", "--at", "2025-10-01");
  }

  private void taste(String code, String day, int liking) {
    farm.done("taste", code, "--liking", String.valueOf(liking), "--eaten", "--at", day);
  }

  private void cull(String code, String day, int count) {
    farm.done("lot", "cull", code, "--count", String.valueOf(count), "--cause", "rot", "--at", day);
  }
}
