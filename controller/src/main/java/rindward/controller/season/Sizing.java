package rindward.controller.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.room.Contact;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.controller.season.SeasonResult.RoomReport;
import rindward.controller.settings.Settings;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.Weather;

/**
 * Which heater, humidifier and exhaust these rooms need, found by living through the season with
 * each size that can be bought: heater first, the others middling, then the others in turn; of
 * every kind the smallest that keeps a room nearly as well as the best would. The largest is not
 * the best: a heater too strong for its room swings it out of its range.
 */
public final class Sizing {
  /** A size is enough when a larger one gains less than this share of the time. */
  private static final double NEARLY = 0.01;

  /** And when it chills fruit no more than this many degree-hours longer. */
  private static final double CHILLING_KH = 1;

  private static final int[] HEATERS_W = {250, 500, 750, 1000, 1500, 2000, 3000};
  private static final int[] HUMIDIFIERS_G_PER_H = {0, 100, 200, 300, 500, 1000};
  private static final int[] EXHAUSTS_L_PER_S = {0, 15, 30, 60, 120};

  private final Settings settings;
  private final Weather weather;
  private final Instant from;
  private final int days;

  public Sizing(Settings settings, Weather weather, Instant from, int days) {
    this.settings = settings;
    this.weather = weather;
    this.from = from;
    this.days = days;
  }

  /**
   * What one room needs.
   *
   * @param heaterW power of the heater
   * @param humidifierKgPerH water the humidifier gives; 0 for none
   * @param exhaustM3PerS air the exhaust moves; 0 for none
   * @param report the season with just these
   */
  public record Need(
      String room, int heaterW, double humidifierKgPerH, double exhaustM3PerS, RoomReport report) {}

  /** Returns how many seasons are lived through. */
  public static int seasons() {
    return HEATERS_W.length + HUMIDIFIERS_G_PER_H.length + EXHAUSTS_L_PER_S.length + 1;
  }

  /**
   * Finds what each room needs.
   *
   * @param progress told after each season; by several threads
   */
  public List<Need> find(Runnable progress) throws IOException {
    Map<String, Map<OutputKind, Integer>> sizes = new LinkedHashMap<>();
    for (Room room : settings.rooms()) {
      Map<OutputKind, Integer> usual = new EnumMap<>(OutputKind.class);
      usual.put(OutputKind.HEATER, middle(HEATERS_W));
      usual.put(OutputKind.HUMIDIFIER, middle(HUMIDIFIERS_G_PER_H));
      usual.put(OutputKind.EXHAUST, middle(EXHAUSTS_L_PER_S));
      sizes.put(room.name(), usual);
    }
    try {
      choose(sizes, OutputKind.HEATER, HEATERS_W, progress);
      choose(sizes, OutputKind.HUMIDIFIER, HUMIDIFIERS_G_PER_H, progress);
      choose(sizes, OutputKind.EXHAUST, EXHAUSTS_L_PER_S, progress);
      Map<String, RoomReport> last = run(sizes, progress);
      List<Need> needs = new ArrayList<>();
      sizes.forEach(
          (room, of) ->
              needs.add(
                  new Need(
                      room,
                      of.getOrDefault(OutputKind.HEATER, 0),
                      of.getOrDefault(OutputKind.HUMIDIFIER, 0) / 1000.0,
                      of.getOrDefault(OutputKind.EXHAUST, 0) / 1000.0,
                      report(last, room))));
      return needs;
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private void choose(
      Map<String, Map<OutputKind, Integer>> sizes,
      OutputKind kind,
      int[] candidates,
      Runnable progress) {
    List<Map<String, RoomReport>> tried =
        java.util.Arrays.stream(candidates)
            .parallel()
            .mapToObj(size -> run(with(sizes, kind, size), progress))
            .toList();
    for (Map.Entry<String, Map<OutputKind, Integer>> room : sizes.entrySet()) {
      List<RoomReport> reports = tried.stream().map(t -> report(t, room.getKey())).toList();
      double best = reports.stream().mapToDouble(RoomReport::inRangeShare).max().orElse(0);
      double warmest =
          reports.stream().mapToDouble(RoomReport::chillingDegreeHours).min().orElse(0);
      for (int i = candidates.length - 1; i >= 0; i--) {
        RoomReport report = reports.get(i);
        if (report.inRangeShare() >= best - NEARLY
            && report.chillingDegreeHours() <= warmest + CHILLING_KH) {
          room.getValue().put(kind, candidates[i]);
        }
      }
    }
  }

  private static Map<String, Map<OutputKind, Integer>> with(
      Map<String, Map<OutputKind, Integer>> sizes, OutputKind kind, int size) {
    Map<String, Map<OutputKind, Integer>> changed = new LinkedHashMap<>();
    sizes.forEach(
        (room, of) -> {
          Map<OutputKind, Integer> own = new EnumMap<>(of);
          own.put(kind, size);
          changed.put(room, own);
        });
    return changed;
  }

  private Map<String, RoomReport> run(
      Map<String, Map<OutputKind, Integer>> sizes, Runnable progress) {
    Settings sized = settings;
    for (Room room : settings.rooms()) {
      Map<OutputKind, Output> outputs = new EnumMap<>(room.outputs());
      sizes
          .getOrDefault(room.name(), Map.of())
          .forEach(
              (kind, size) -> {
                if (size == 0) {
                  outputs.remove(kind);
                } else {
                  outputs.put(kind, sized(room, kind, size));
                }
              });
      sized = sized.withOutputs(room.name(), outputs);
    }
    try {
      SeasonResult report =
          new Season(sized, weather, from, days).run(new RuleBasedController(), () -> {});
      progress.run();
      Map<String, RoomReport> byRoom = new LinkedHashMap<>();
      report.rooms().forEach(r -> byRoom.put(r.name(), r));
      return byRoom;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Output sized(Room room, OutputKind kind, int size) {
    Output known = room.outputs().get(kind);
    Duration minute = Duration.ofMinutes(1);
    Output like =
        known != null
            ? known
            : new Output(
                room.name() + "-" + kind.word(), kind, Contact.RELAY, minute, minute, 20, 0);
    return kind == OutputKind.HEATER
        ? new Output(
            like.name(), kind, like.contact(), like.minimumOn(), like.minimumOff(), size, 0)
        : new Output(
            like.name(),
            kind,
            like.contact(),
            like.minimumOn(),
            like.minimumOff(),
            like.powerW(),
            size);
  }

  private static RoomReport report(Map<String, RoomReport> reports, String room) {
    RoomReport report = reports.get(room);
    if (report == null) {
      throw new IllegalStateException("no report on room " + room);
    }
    return report;
  }

  private static int middle(int[] sizes) {
    return sizes[sizes.length / 2];
  }
}
