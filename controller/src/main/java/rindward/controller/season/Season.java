package rindward.controller.season;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.control.Controller;
import rindward.controller.crop.RateCurve;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.room.Output;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.Room;
import rindward.controller.season.SeasonLoop.Watched;
import rindward.controller.season.SeasonResult.LotReport;
import rindward.controller.season.SeasonResult.OutputReport;
import rindward.controller.season.SeasonResult.RoomReport;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.hardware.shed.OutputMeter;
import rindward.hardware.shed.SimulatedShed;
import rindward.hardware.shed.Weather;

/** Lives through the season that a settings file plans, and reports. */
public final class Season {
  private static final double MILLIS_AN_HOUR = 3_600_000;

  private final Settings settings;
  private final Weather weather;
  private final Instant from;
  private final int days;

  public Season(Settings settings, Weather weather, Instant from, int days) {
    this.settings = settings;
    this.weather = weather;
    this.from = from;
    this.days = days;
  }

  /**
   * Runs it.
   *
   * @param progress told after each simulated day
   * @throws IOException when the settings name what a simulated shed does not have
   */
  public SeasonResult run(Controller controller, Runnable progress) throws IOException {
    Time.Stepped time = new Time.Stepped(from);
    try (SimulatedShed shed = SimulatedBoard.open(settings, weather, time)) {
      PlannedSeason course = new PlannedSeason(settings, shed, from);
      Map<Room, List<Watched>> probes = new LinkedHashMap<>();
      for (Room room : settings.rooms()) {
        probes.put(room, watched(shed, room.name()));
      }
      SeasonLoop loop =
          new SeasonLoop(shed, time, settings.tick(), probes, watched(shed, ""), controller);
      loop.run(Duration.ofDays(days), course, progress);
      return report(shed, course, time.now().at());
    }
  }

  private List<Watched> watched(SimulatedShed shed, String room) throws IOException {
    List<Watched> watched = new ArrayList<>();
    for (ProbeSetting probe : settings.probes()) {
      boolean outdoors = probe.place() == ProbePlace.OUTDOOR;
      if (outdoors ? room.isEmpty() : probe.room().equals(room)) {
        watched.add(new Watched(shed.probe(probe.name()), probe.place()));
      }
    }
    return watched;
  }

  private SeasonResult report(SimulatedShed shed, PlannedSeason course, Instant end)
      throws IOException {
    List<RoomReport> rooms = new ArrayList<>();
    for (Room room : settings.rooms()) {
      List<OutputReport> outputs = new ArrayList<>();
      double kWh = 0;
      for (Output output : room.outputs().values()) {
        OutputMeter meter = shed.meter(output.name());
        kWh += meter.kWh();
        outputs.add(
            new OutputReport(
                output.name(),
                output.kind().word(),
                meter.kWh(),
                meter.switchings(),
                meter.hoursOn()));
      }
      RoomScore score = course.score(room.name());
      rooms.add(
          new RoomReport(
              room.name(),
              score.inRangeShare(),
              known(score.coldestC()),
              known(score.dampestPct()),
              score.tooColdHours(),
              score.tooWarmHours(),
              score.tooDryHours(),
              score.tooDampHours(),
              kWh,
              score.wetFruitHours(),
              score.fruitChillingKh(),
              outputs));
    }
    List<LotReport> lots =
        course.fates(end).stream()
            .map(
                f ->
                    new LotReport(
                        f.code(),
                        f.account().curedAt(),
                        (f.account().curing().inRange().measured()
                                + f.account().keeping().inRange().measured())
                            / MILLIS_AN_HOUR,
                        Math.min(
                            1, f.account().cureProgress().measured() / (double) RateCurve.WHOLE)))
            .toList();
    return new SeasonResult(rooms, lots);
  }

  private static @Nullable Double known(double value) {
    return Double.isNaN(value) ? null : value;
  }
}
