package rindward.controller.diagnosis;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmPerformance;
import rindward.controller.diagnosis.ColdTrial.Outcome;
import rindward.controller.diagnosis.SeasonOfAlarms.Call;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.ShedFault.Kind;

/**
 * Prints how well the alarms behave: over a season in which nothing breaks, for each thing that can
 * break, and what the forecast of cold is worth, against the aims.
 */
final class AlarmPerformanceTable {
  private static final int SEASON_DAYS = 181;
  private static final int SEED = 7;

  private AlarmPerformanceTable() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    Path example = Path.of(args[0]);
    season(example);
    faults(example);
    forecasts();
    System.exit(0);
  }

  private static void season(Path example) throws IOException, InterruptedException {
    for (int seed : new int[] {SEED, SEED + 1}) {
      try (SeasonOfAlarms season =
          new SeasonOfAlarms(
              example, GeneratedWeather.temperate(seed), LocalDate.of(2026, 9, 20))) {
        Instant from = season.now();
        season.live(SEASON_DAYS);
        List<Call> calls = season.calls(from);
        AlarmPerformance marks = season.marks(calls, from);
        print(
            "season without a fault, year %d: %d alarms in %d days (%.2f a day), %d of them wake, "
                + "at most %d in ten minutes, %d floods, %d chattering, %d stale%n",
            seed,
            marks.alarms(),
            SEASON_DAYS,
            marks.perDayThousandths() / 1000.0,
            calls.stream().filter(Call::wakes).count(),
            marks.mostInTenMinutes(),
            marks.floods(),
            marks.chattering().size(),
            marks.stale().size());
        Map<String, Long> kinds =
            calls.stream()
                .collect(
                    Collectors.groupingBy(
                        c -> c.id().kind().word() + "@" + c.id().room(),
                        TreeMap::new,
                        Collectors.counting()));
        print("    of these: %s%n    stale: %s%n", kinds, words(marks.stale()));
      }
    }
  }

  private static void faults(Path example) throws IOException, InterruptedException {
    print("%n| fault, in December | first call, min | calls | of them wake | what |%n");
    print("| --- | ---: | ---: | ---: | --- |%n");
    List<ShedFault> faults =
        List.of(
            ShedFault.of(Kind.OUTPUT_DEAD, "storage-heater"),
            ShedFault.of(Kind.OUTPUT_STUCK_ON, "storage-heater"),
            ShedFault.of(Kind.OUTPUT_DEAD, "storage-exhaust"),
            ShedFault.of(Kind.OUTPUT_STUCK_ON, "storage-exhaust"),
            ShedFault.of(Kind.OUTPUT_DEAD, "storage-humidifier"),
            ShedFault.of(Kind.OUTPUT_STUCK_ON, "storage-humidifier"),
            ShedFault.of(Kind.DOOR_OPEN, "storage", 0.3),
            ShedFault.of(Kind.PROBE_SILENT, "storage-air"),
            ShedFault.of(Kind.PROBE_FROZEN, "storage-air"),
            ShedFault.of(Kind.PROBE_SILENT, "outdoor"),
            ShedFault.of(Kind.RELAY_LOST, "storage-heater"),
            ShedFault.ofBoard(Kind.BOARD_LOST),
            ShedFault.ofBoard(Kind.SUPPLY_LOST));
    for (ShedFault fault : faults) {
      try (SeasonOfAlarms shed =
          new SeasonOfAlarms(
              example, GeneratedWeather.temperate(SEED), LocalDate.of(2026, 12, 10))) {
        shed.live(3);
        Instant breaks = shed.now();
        shed.breaks(fault);
        shed.live(Duration.ofHours(12));
        List<Call> calls = new ArrayList<>(shed.calls(breaks));
        calls.sort(Comparator.comparing(Call::at));
        print(
            "| %s %s | %s | %d | %d | %s |%n",
            fault.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
            fault.target(),
            calls.isEmpty()
                ? "-"
                : Long.toString(Duration.between(breaks, calls.get(0).at()).toMinutes()),
            calls.size(),
            calls.stream().filter(Call::wakes).count(),
            calls.stream()
                .map(c -> c.id().kind().word())
                .distinct()
                .collect(Collectors.joining(", ")));
      }
    }
  }

  private static void forecasts() throws IOException {
    print(
        "%n| forecast of cold | runs | spoken | lead, min: median | share of what physics allows: "
            + "median | aim |%n| --- | ---: | ---: | ---: | ---: | --- |%n");
    leads("slow: heater dead, 300 kg and more", List.of(600.0, 400.0, 300.0), "45 min and 60 %");
    leads("nearly empty: heater dead, 80 kg", List.of(80.0), "20 min");
    List<Double> seen = new ArrayList<>();
    int doors = 0;
    int falseWords = 0;
    int days = 0;
    ShedFault door = ShedFault.of(Kind.DOOR_OPEN, "storage", 0.2);
    for (int seed = 1; seed <= 12; seed++) {
      Outcome open = new ColdTrial(400, seed, 12, 750, door, 5 + seed % 3, seed * 5 % 24, 8).run();
      doors++;
      if (open.fallSeen() != ColdTrial.NEVER) {
        seen.add(open.fallSeen());
      }
      Outcome well = new ColdTrial(400, seed, 12, 750, null, 30, 0, 0).run();
      falseWords += well.falseForecasts() + well.falseHeater() + well.falseFalls();
      days += 30;
    }
    print(
        "%ndoor ajar: seen in %d of %d, after %.1f min (median), %.1f at most; aim 3 min%n",
        seen.size(), doors, median(seen), seen.stream().mapToDouble(d -> d).max().orElse(0));
    print("false words in %d days without a fault: %d; aim 1 in 30 days%n", days, falseWords);
  }

  private static void leads(String what, List<Double> masses, String aim) throws IOException {
    List<Double> leads = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    int runs = 0;
    int spoken = 0;
    for (double kg : masses) {
      for (int seed = 1; seed <= 8; seed++) {
        Outcome outcome = ColdTrial.deadHeater(kg, seed, 11.5).run();
        if (outcome.crossed() == ColdTrial.NEVER) {
          continue;
        }
        runs++;
        spoken += outcome.lead() > 0 ? 1 : 0;
        leads.add(outcome.lead());
        shares.add(outcome.share());
      }
    }
    print(
        "| %s | %d | %d | %.0f | %.0f %% | %s |%n",
        what, runs, spoken, median(leads), 100 * median(shares), aim);
  }

  private static double median(List<Double> values) {
    double[] sorted = values.stream().mapToDouble(d -> d).toArray();
    Arrays.sort(sorted);
    return sorted.length == 0 ? Double.NaN : sorted[sorted.length / 2];
  }

  private static String words(Set<AlarmId> ids) {
    return ids.stream().map(AlarmId::key).sorted().collect(Collectors.joining(", "));
  }

  private static void print(String format, Object... values) {
    System.out.printf(Locale.ROOT, format, values);
  }
}
