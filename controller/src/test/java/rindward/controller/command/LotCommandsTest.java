package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import rindward.controller.command.demo.DemoCommand;

/** Lots from the command line, as a grower types it. */
class LotCommandsTest {
  @TempDir Path folder;
  private Path settings;

  @BeforeEach
  void shed() throws IOException {
    settings = shedIn(folder.resolve("one"));
  }

  @Test
  void aSeasonOfOneLot_isKeptAndShown() {
    done(
        "add",
        "K4T",
        "--crop",
        "turban",
        "--place",
        "porch",
        "--count",
        "46",
        "--grade",
        "ripe",
        "--weight",
        "51kg",
        "--at",
        "2026-09-20");
    done("attest", "K4T", "stem dry", "--at", "2026-10-01");
    done("move", "K4T", "--place", "storage", "--at", "2026-10-02");
    done("reserve", "K4T", "--purpose", "panel", "--count", "3", "--at", "2026-10-03");
    done("cull", "K4T", "--cause", "soft", "--at", "2026-10-20");
    CommandRun used = done("use", "K4T", "--count", "2", "--at", "2026-10-21");

    assertThat(used.out())
        .isEqualTo(
            "K4T  buttercup, ripe, in storage: 43 of 46 sound (set aside: 3 for panel), 2 used,"
                + " 1 lost\n");
    assertThat(done("show", "K4T").out())
        .contains("harvested", "attested note=stem dry", "culled count=1 cause=soft");
    assertThat(done("list", "--json").out()).contains("\"sound\" : 43", "\"free\" : 40");
  }

  @Test
  void add_withoutCode_suggestsOne() {
    CommandRun added = done("add", "--crop", "kabocha", "--place", "porch", "--count", "4");

    assertThat(added.out()).matches("(?s)[ACEFHJKMPRTXY3479]{3}  kabocha, in porch: 4 of 4 .*");
  }

  @Test
  void refusal_isOneSentence_andNothingIsKept() {
    CommandRun run = run("add", "K4T", "--crop", "kabosha", "--place", "porch", "--count", "4");

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo(
            "crop was 'kabosha' but the crop guide has no type of that name; did you mean"
                + " 'kabocha'?\n");
    assertThat(done("list").out()).isEmpty();
  }

  @Test
  void severalCrates_moveTogether_andGoBackTogether() {
    add("A3A");
    add("C3C");

    assertThat(done("move", "A3A", "c3c", "--place", "cellar").out())
        .contains("A3A  kabocha, in cellar", "C3C  kabocha, in cellar")
        .endsWith("There is no probe in cellar: the time there will be unknown.\n");
    assertThat(run("move", "A3A", "X9X", "--place", "attic").exit()).isEqualTo(2);
    assertThat(done("list").out()).doesNotContain("attic");

    assertThat(done("undo", "A3A").out())
        .startsWith("Taken back: 2 entries.")
        .contains("A3A  kabocha, in porch", "C3C  kabocha, in porch");
  }

  @Test
  void correct_changesOneField_andKeepsTheRest() {
    add("A3A");

    assertThat(done("correct", "1", "--set", "count=9").out()).contains("9 of 9 sound");
    assertThat(run("correct", "1", "--set", "cuont=9").err()).contains("did you mean 'count'?");
    assertThat(run("correct", "1", "--set", "lot=B9B").err()).contains("about the same subject");
    assertThat(run("correct", "77", "--set", "count=9").err())
        .contains("ENTRY was '77' but no entry of that number stands");
  }

  @Test
  void weigh_heavierThanBefore_isKeptWithAWarning() {
    add("A3A");
    done("weigh", "A3A", "--fruit", "tag 1", "--weight", "1.40kg", "--at", "2026-10-01");

    CommandRun heavier = done("weigh", "A3A", "--fruit", "tag 1", "--weight", "3.2lb");

    assertThat(heavier.out()).contains("This is heavier than last time (1400 g a fruit");
    assertThat(done("show", "A3A").out()).contains("weight_g=1451");
    assertThat(run("weigh", "A3A", "--weight", "2kg", "--tare", "2kg").err())
        .contains("tare in grams was '2000' but it must be at most 1999");
  }

  @Test
  void note_ofEveryKind_isKept() {
    add("A3A");
    done("note", "A3A", "grew on the wet side");
    done("note", "A3A", "--set-on", "2026-08-08", "--fruits", "2");
    done("note", "A3A", "--sign", "seeds-flat", "--fruits", "1");
    done("note", "A3A", "--frost", "-1.5", "--minutes", "90", "--covered");

    assertThat(done("show", "A3A").out())
        .contains(
            "note=grew on the wet side",
            "sign=tagged-set days_low=43 days_high=43",
            "sign=seeds-flat days_low=15 days_high=40",
            "minimum_c=-1.500 minutes=90 covered=yes water_soaked=no");
    assertThat(run("note", "A3A").err()).contains("Say what to note");
  }

  @Test
  void plotPlan_givesCodesInAdvance_andTheHarvestFillsIn() throws IOException {
    Path plan =
        Files.writeString(
            folder.resolve("plan.csv"),
            "kind,at,plot,lot,crop,variety,check,plants,expected_days\n"
                + "planted,2026-04-01,P7,,turban,Lantern Hill,no,6,95\n"
                + "planted,2026-04-01,P8,R7A,kabocha,Winterglut,yes,6,\n");

    assertThat(done("import", plan.toString()).out()).endsWith("Taken: 2 of 2 lines.\n");

    String[] planned = done("list").out().split("\n", -1);
    assertThat(planned[0]).matches("\\w{3}  buttercup Lantern Hill, planned in plot P7");
    assertThat(done("labels").out()).contains("<title>Lot R7A</title>", planned[0].substring(0, 3));
    assertThat(done("add", "r7a", "--place", "porch", "--count", "12", "--grade", "doubtful").out())
        .startsWith("R7A  kabocha Winterglut, doubtful, in porch: 12 of 12 sound\n");
  }

  /** The farm lies in Chicago: what was said at nine there is told at nine. */
  @Test
  void times_areTheFarms() {
    done(
        "add",
        "A3A",
        "--crop",
        "kabocha",
        "--place",
        "porch",
        "--count",
        "5",
        "--at",
        "2026-09-20T09:00");
    assertThat(done("show", "A3A").out())
        .contains("2026-09-20 09:00  ")
        .doesNotContain("2026-09-20T14:00");
  }

  @Test
  void samePlanTwice_addsNothing_andOnePlotPlannedOtherwiseIsTold() throws IOException {
    String header = "kind,at,plot,lot,crop,variety,check,plants,sown\n";
    String one = "planted,2026-04-01,P7,,turban,Lantern Hill,no,6,2026-05-02\n";
    Path plan = Files.writeString(folder.resolve("plan.csv"), header + one);
    done("import", plan.toString());
    String before = done("export").out();

    assertThat(done("import", plan.toString()).out())
        .isEqualTo("Taken: 0 of 1 lines; 1 is known already.\n");
    assertThat(done("export").out()).isEqualTo(before);

    Files.writeString(plan, header + one.replace("Lantern Hill", "Lantern Hall"));
    CommandRun otherwise = run("import", plan.toString());
    assertThat(otherwise.exit()).isEqualTo(2);
    assertThat(otherwise.err()).contains("plot P7 of 2026 is planned already, otherwise, as lot");
    assertThat(done("export").out()).isEqualTo(before);

    Files.writeString(plan, header + one.replace("2026", "2025"));
    assertThat(done("import", plan.toString()).out())
        .as("the same plot, another season")
        .endsWith("Taken: 1 of 1 lines.\n");
  }

  @Test
  void import_isLookedAtBefore_andTakenBackAsOne() throws IOException {
    String header = "kind,at,plot,lot,crop,variety,check,plants,sown\n";
    Path plan =
        Files.writeString(
            folder.resolve("plan.csv"),
            header
                + "planted,2026-04-01,P7,K7A,turban,Lantern Hill,no,6,\n"
                + "planted,2026-04-01,P8,K8A,kabocha,Winterglut,no,6,\n");
    String before = done("export").out();

    assertThat(done("import", plan.toString(), "--look").out())
        .contains("line 2: planted lot=K7A", "plot=P8", "Would be added: 2 of 2 lines.");
    assertThat(done("export").out()).isEqualTo(before);

    assertThat(done("import", plan.toString()).out())
        .startsWith("All of it is taken back by: rindward lot undo --settings shed.toml K7A\n");
    assertThat(done("undo", "K7A").out()).contains("Taken back: 2 entries.");
    assertThat(done("export").out()).isEqualTo(before);
  }

  @Test
  void import_badLines_areAllListed_andNothingIsTakenUnlessAsked() throws IOException {
    add("A3A");
    Path file =
        Files.writeString(
            folder.resolve("harvest.csv"),
            "lot,crop,count,place,at\n"
                + "A3A,kabocha,4,porch,2026-09-20\n"
                + "C3C,kabocha,some,porch,2026-09-20\n"
                + "E3E,kabocha,4,porch,2026-09-20\n");

    CommandRun refused = run("import", file.toString());
    assertThat(refused.exit()).isEqualTo(2);
    assertThat(refused.err())
        .contains(
            "harvest.csv line 2: lot was 'A3A' but a lot of that code exists already",
            "harvest.csv line 3: count was 'some' but it must be a whole number",
            "Nothing was taken");
    assertThat(done("list").out()).doesNotContain("E3E");

    CommandRun accepted = run("import", file.toString(), "--accept-good-lines");
    assertThat(accepted.exit()).isEqualTo(1);
    assertThat(accepted.out()).endsWith("Taken: 1 of 3 lines.\n");
    assertThat(done("list").out()).contains("E3E");
  }

  @Test
  void export_importedElsewhere_exportsTheSame() throws IOException {
    add("A3A");
    done("note", "A3A", "a \"quoted\", comma'd note");
    done("cull", "A3A", "--cause", "rot");
    done("correct", "1", "--set", "variety=Winterglut");
    done("move", "A3A", "--place", "cellar");
    done("undo", "A3A");
    Path file = folder.resolve("lots.csv");
    done("export", "--out", file.toString());

    settings = shedIn(folder.resolve("two"));
    done("import", file.toString());

    assertThat(done("export").out()).isEqualTo(Files.readString(file)).doesNotContain("cellar");
  }

  @Test
  void oneStoreForEverything_warnsOnceEach_andIsSilentOnceAccepted() throws IOException {
    Files.writeString(
        settings,
        Files.readString(settings)
            .replace("temperature = [10, 13]", "temperature = [12, 15]")
            .replace("humidity = [50, 70]", "humidity = [54, 70]"));
    String[] crops = {"onion", "garlic", "sweet-potato", "calabaza"};
    for (int i = 0; i < crops.length; i++) {
      done(
          "add",
          "L" + i,
          "--crop",
          crops[i],
          "--place",
          "porch",
          "--count",
          "9",
          "--at",
          "2026-09-20");
    }

    String moved = done("move", "L0", "L1", "L2", "L3", "--place", "storage").out();

    assertThat(moved.lines().filter(line -> line.contains("best"))).hasSize(4);
    assertThat(moved)
        .contains("L0  Onion: 13.5 C is too warm")
        .contains("L2  Sweet potato: At 62 % it dries out");
    assertThat(done("move", "L0", "--place", "storage", "--accept").out())
        .doesNotContain("too warm");
    assertThat(done("move", "L0", "--place", "storage").out()).doesNotContain("too warm");
  }

  @Test
  void acornBroughtIntoTheCuringRoom_isWarned() {
    assertThat(done("add", "A7A", "--crop", "acorn", "--place", "curing", "--count", "9").out())
        .contains("A7A  Acorn squash: 28 C is too warm", "Acorn squash is not cured");
  }

  @Test
  void eat_offersWhatIsReady_withReasons_andNothingThatIsSetAside() {
    String longAgo = LocalDate.now(ZoneOffset.UTC).minusDays(46).toString();
    for (String code : List.of("A3A", "K4T", "C7C")) {
      done(
          "add",
          code,
          "--crop",
          code.equals("K4T") ? "kabocha" : "acorn",
          "--place",
          "cellar",
          "--count",
          "3",
          "--at",
          longAgo);
    }
    done("reserve", "C7C", "--purpose", "seed", "--count", "3");

    String eat = CommandRun.of("eat", "--settings", settings.toString()).out();

    assertThat(eat)
        .containsSubsequence(
            "A3A  acorn, in cellar: 3 of 3 sound",
            "  eat first",
            "days of a life of 30 to 60.",
            "How sure: assumed",
            "K4T  kabocha, in cellar",
            "  ready: dry and mealy or sweeter and moister")
        .doesNotContain("C7C");
    assertThat(done("show", "A3A").out())
        .contains("verdict  eat first", "Acorn squash is not cured");
    assertThat(done("show", "A3A", "--json").out()).contains("\"state\" : \"eat first\"");
    assertThat(done("list", "--verdicts").out()).contains("  eat first");
    assertThat(done("list", "--verdicts", "--json").out()).contains("\"state\" : \"eat first\"");
  }

  @Test
  void everyCommandOfLots_explainsItselfWithAnExample() {
    CommandLine lot = Main.commandLine().getSubcommands().get("lot");
    for (String name : lot.getSubcommands().keySet()) {
      CommandRun run = CommandRun.of("lot", name, "--help");
      assertThat(run.exit()).isZero();
      assertThat(run.out()).contains("Example").contains("  rindward lot " + name + " --settings");
    }
  }

  private void add(String code) {
    done(
        "add", code, "--crop", "kabocha", "--place", "porch", "--count", "5", "--at", "2026-09-20");
  }

  private CommandRun done(String... args) {
    CommandRun run = run(args);
    assertThat(run.err()).isEmpty();
    assertThat(run.exit()).isZero();
    return run;
  }

  private CommandRun run(String... args) {
    List<String> all = new ArrayList<>(List.of("lot", args[0], "--settings", settings.toString()));
    all.addAll(Arrays.asList(args).subList(1, args.length));
    CommandRun run = CommandRun.of(all.toArray(String[]::new));
    return new CommandRun(run.exit(), run.out().replace("\r\n", "\n"), run.err());
  }

  private static Path shedIn(Path folder) throws IOException {
    Path file = Files.createDirectories(folder).resolve("shed.toml");
    try (InputStream in = DemoCommand.class.getResourceAsStream("shed.toml")) {
      Files.copy(in, file);
    }
    return file;
  }
}
