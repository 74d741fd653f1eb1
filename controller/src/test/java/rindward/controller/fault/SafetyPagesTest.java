package rindward.controller.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.AlarmRow;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Keeping;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.CropGuideReader;
import rindward.hardware.shed.FruitPhysics;

/** What the safety pages say of this program is what this program says, to the word and figure. */
class SafetyPagesTest {
  private static final Path WIRING = Path.of("../hardware/WIRING.md");
  private static final AlarmTable ALARMS = AlarmTableReader.builtIn();

  /** Words in quotes that are no words of the program: of makers, and a heading of the README. */
  private static final List<String> OTHERS =
      List.of("protective separation", "safe isolation", "10 A", "What works today", "Nothing");

  /** What the program puts into a sentence: figures, names, and halves joined by "and". */
  private static final Pattern FIGURE_OR_NAME =
      Pattern.compile(
          "[0-9.]+|[,%():]|\\band\\b|The store is|\\b(storage|curing)-[a-z]+|\\b(Probe"
              + " )?(outdoor|air)\\b");

  @Test
  void wordsInQuotes_areTheProgramsOwn() throws IOException {
    String said = allThatTheProgramSays();
    List<String> unknown = new ArrayList<>();
    for (Path page : List.of(FaultTable.PAGE, WIRING)) {
      for (String quote : quotes(Files.readString(page))) {
        if (OTHERS.contains(quote)) {
          continue;
        }
        for (String part : FIGURE_OR_NAME.split(quote, -1)) {
          String words = part.strip();
          if (words.contains(" ") && !said.contains(words)) {
            unknown.add(page.getFileName() + ": " + quote + " (" + words + ")");
          }
        }
      }
    }
    assertThat(unknown).isEmpty();
  }

  @Test
  void alarmsThatThePageNames_areCalledSo() throws IOException {
    String page = Files.readString(FaultTable.PAGE).replaceAll("\\s+", " ");
    assertThat(page)
        .contains("reset the alarm \"" + ALARMS.row(AlarmKind.HEATER_RUNAWAY).name() + "\"");
  }

  @Test
  void noAlarmAndNoPage_asksForAFuseToBePulled_orALimitResetBlindly() throws IOException {
    List<String> texts = new ArrayList<>();
    for (AlarmKind kind : AlarmKind.values()) {
      AlarmRow row = ALARMS.row(kind);
      texts.add(row.toString());
    }
    texts.add(Files.readString(FaultTable.PAGE));
    texts.add(Files.readString(WIRING));
    Pattern pulled =
        Pattern.compile("(?i)pull (the|its|or) [a-z' ]*fuse|heater's plug|press its limit's reset");
    assertThat(texts).noneMatch(text -> pulled.matcher(text.replaceAll("\\s+", " ")).find());
    assertThat(ALARMS.row(AlarmKind.HEATER_RUNAWAY).action())
        .contains("switch off and lock the heater's breaker");
  }

  @Test
  void frostSetPoints_areAboveFreezing_andBelowWhatTheGuideKeepsTheCropAt() throws IOException {
    CropGuide guide = CropGuideReader.builtIn();
    Map<String, String> crops =
        Map.of(
            "winter squash, pumpkin", "winter-squash",
            "sweet potato", "sweet-potato",
            "potato", "potato",
            "onion", "onion",
            "shallot", "shallot",
            "garlic", "garlic");
    List<String[]> rows =
        table("| crop | freezes at |").stream().filter(row -> crops.containsKey(row[0])).toList();
    assertThat(rows).hasSameSizeAs(crops.keySet());
    for (String[] row : rows) {
      Keeping keep = guide.crop(crops.getOrDefault(row[0], "")).orElseThrow().keeping();
      double[] range = figures(row[2].replace("-", " "));
      double[] set = figures(row[3].replace("-", " "));
      assertThat(figures(row[1])[0] * 1000)
          .as(row[0])
          .isEqualTo(keep.freezing().value().doubleValue());
      assertThat(range[0] * 1000).as(row[0]).isEqualTo((double) keep.temperature().value().low());
      assertThat(range[1] * 1000).as(row[0]).isEqualTo((double) keep.temperature().value().high());
      assertThat(set[0] - 1)
          .as("%s: a thermostat 1 C off", row[0])
          .isGreaterThan(figures(row[1])[0]);
      assertThat(set[set.length - 1] + 1).as(row[0]).isLessThan(range[1]);
    }
  }

  /** Conversions by hand: 10.7 J and 0.556 ml (1.80 mg/ml at 25 C) with each mg of CO2. */
  @Test
  void carbonDioxide_isReckonedAsThePageSays() throws IOException {
    FruitPhysics squash = FruitPhysics.WINTER_SQUASH;
    double tens = (25 - FruitPhysics.RESPIRATION_REFERENCE_C) / 10;
    double mlPerKgHour =
        squash.respirationWPerKg() * Math.pow(squash.q10(), tens) * 3_600 / 10.7 / 1.80;
    List<String[]> rows = table("| breathes, ml of CO2");
    assertThat(rows).hasSize(4);
    assertThat(figures(rows.get(2)[0])[0]).isEqualTo(Math.round(mlPerKgHour * 10) / 10.0);
    for (String[] row : rows) {
      double litres = figures(row[0])[0] * 600 / 1_000;
      double ppm = litres / 13.7 * 1_000;
      assertThat(row[1]).isEqualTo(String.format(Locale.ROOT, "%.1f", litres));
      assertThat(row[2]).isEqualTo(String.valueOf(Math.round(ppm)));
      assertThat(row[3]).isEqualTo(hours((5_000 - 420) / ppm));
      assertThat(row[4]).isEqualTo(hours((40_000 - 420) / ppm));
    }
  }

  private static String hours(double hours) {
    return String.format(Locale.ROOT, hours < 10 ? "%.1f h" : "%.0f h", hours);
  }

  private static List<String[]> table(String head) throws IOException {
    String page = Files.readString(FaultTable.PAGE);
    String from = page.substring(page.indexOf(head));
    return from.lines()
        .skip(2)
        .takeWhile(line -> line.startsWith("|"))
        .map(line -> line.substring(1).split("\\|", -1))
        .map(cells -> Arrays.stream(cells).map(String::strip).toArray(String[]::new))
        .toList();
  }

  private static double[] figures(String text) {
    return Pattern.compile("-?[0-9]+(\\.[0-9]+)?")
        .matcher(text.replace(",", ""))
        .results()
        .mapToDouble(found -> Double.parseDouble(found.group()))
        .toArray();
  }

  private static List<String> quotes(String page) {
    String prose = page.replaceAll("`[^`]*`", "").replaceAll("\\s+", " ");
    return Pattern.compile("\"([^\"|]+)\"").matcher(prose).results().map(q -> q.group(1)).toList();
  }

  /** Every text in the sources, with the breaks between its lines taken out. */
  private static String allThatTheProgramSays() throws IOException {
    StringBuilder all = new StringBuilder();
    for (Path folder : List.of(Path.of("src/main"), Path.of("../hardware/src/main"))) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.filter(SafetyPagesTest::isText).toList()) {
          all.append(Files.readString(file));
        }
      }
    }
    return all.toString().replaceAll("\"\\s*\\+\\s*\"", "");
  }

  private static boolean isText(Path file) {
    return file.toString().endsWith(".java") || file.toString().endsWith(".toml");
  }
}
