package rindward.controller.diagnosis;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.diagnosis.SeasonOfAlarms.Call;
import rindward.hardware.shed.GeneratedWeather;

/**
 * Prints how often a season in which nothing breaks is said to have something broken, by what the
 * air does: a heater without effect or that does not stop, an output without effect, a probe that
 * no longer answers, outdoor air that rushes in. Aim: at most one a season.
 */
final class PhysicsAlarmsTable {
  private static final int SEASON_DAYS = 181;
  private static final Set<AlarmKind> BY_PHYSICS =
      EnumSet.of(
          AlarmKind.HEATER_WITHOUT_EFFECT,
          AlarmKind.HEATER_RUNAWAY,
          AlarmKind.OUTPUT_WITHOUT_EFFECT,
          AlarmKind.OUTPUT_WILL_NOT_STOP,
          AlarmKind.COOLING_FASTER,
          AlarmKind.COOLING_SLOWER,
          AlarmKind.PROBE_FROZEN,
          AlarmKind.PROBES_SWAPPED);

  private PhysicsAlarmsTable() {}

  /** Takes the settings' file, and the first and the last of the invented years to live through. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int last = Integer.parseInt(args[2]);
    print("| year | alarms | a day | wake | by physics, all false | what |%n");
    print("| ---: | ---: | ---: | ---: | ---: | --- |%n");
    int most = 0;
    for (int seed = Integer.parseInt(args[1]); seed <= last; seed++) {
      try (SeasonOfAlarms season =
          new SeasonOfAlarms(
              Path.of(args[0]), GeneratedWeather.temperate(seed), LocalDate.of(2026, 9, 20))) {
        Instant from = season.now();
        season.live(SEASON_DAYS);
        List<Call> calls = season.calls(from);
        Map<String, Long> kinds =
            calls.stream()
                .filter(call -> BY_PHYSICS.contains(call.id().kind()))
                .collect(
                    Collectors.groupingBy(
                        call -> call.id().kind().word() + " " + call.id().room(),
                        TreeMap::new,
                        Collectors.counting()));
        int physics = kinds.values().stream().mapToInt(Long::intValue).sum();
        most = Math.max(most, physics);
        print(
            "| %d | %d | %.2f | %d | %d | %s |%n",
            seed,
            calls.size(),
            (double) calls.size() / SEASON_DAYS,
            calls.stream().filter(Call::wakes).count(),
            physics,
            kinds.entrySet().stream()
                .map(kind -> kind.getKey() + ": " + kind.getValue())
                .collect(Collectors.joining(", ")));
      }
    }
    print("%nmost in one season: %d; aim 1%n", most);
    System.exit(0);
  }

  private static void print(String format, Object... values) {
    System.out.printf(Locale.ROOT, format, values);
  }
}
