package rindward.dashboard;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import rindward.dashboard.rooms.ClimateDesk;
import rindward.dashboard.rooms.ClimateView;
import rindward.dashboard.rooms.ClimateView.BandView;
import rindward.dashboard.rooms.ClimateView.LineView;
import rindward.dashboard.rooms.MarksView;
import rindward.dashboard.rooms.MarksView.CalledView;
import rindward.dashboard.rooms.MarksView.MovedView;
import rindward.dashboard.rooms.SwitchingView;
import rindward.dashboard.rooms.SwitchingView.ChangeView;
import rindward.dashboard.rooms.SwitchingView.StripView;

/** Thirty days of air that nobody measured: warm days, cool nights, and three hours missing. */
final class InventedClimate implements ClimateDesk {
  private static final Set<String> ROOMS = Set.of("Curing room", "Keeping room");
  private static final double DAY = 86_400;
  private static final Duration RECORD = Duration.ofDays(30);

  private final Instant now;

  InventedClimate(Instant now) {
    this.now = now;
  }

  @Override
  public boolean knows(String room) {
    return ROOMS.contains(room);
  }

  @Override
  public ClimateView climate(String room, Instant from, Instant to, int slots, boolean outdoors) {
    double offset = room.startsWith("Keeping") ? -15 : 0;
    return new ClimateView(
        room,
        from,
        to,
        Math.max(1, Duration.between(from, to).toMillis() / slots),
        "Europe/London",
        new BandView(26 + offset, 29 + offset),
        new BandView(75, 85),
        line(from, to, slots, t -> 27.5 + offset + wave(t, 0.02) + 1.1 * wave(t, 1)),
        line(from, to, slots, t -> 79 + 2 * wave(t, 0.05) - 5 * wave(t, 1)),
        line(from, to, slots, t -> 23.4 + offset + 0.6 * wave(t, 1)),
        outdoors ? line(from, to, slots, t -> 9 + 6 * wave(t, 1) + 3 * wave(t, 6)) : LineView.NONE,
        outdoors ? line(from, to, slots, t -> 80 - 12 * wave(t, 1)) : LineView.NONE);
  }

  @Override
  public SwitchingView switching(String room, Instant from, Instant to, int slots) {
    List<Double> heater = new ArrayList<>();
    List<Double> fan = new ArrayList<>();
    List<Double> humidifier = new ArrayList<>();
    double step = Duration.between(from, to).toMillis() / 1000.0 / slots;
    for (int i = 0; i < slots; i++) {
      double t = from.getEpochSecond() + i * step;
      boolean known = isKnown(t);
      double share = Math.round(50 - 50 * wave(t, 1)) / 100.0;
      heater.add(
          known ? (Double) (step > 3_600 ? share : wave(t, 0.02) < share - 0.5 ? 1 : 0) : null);
      fan.add(known ? (Double) 1.0 : null);
      humidifier.add(known ? (Double) (wave(t, 0.1) > 0.8 ? 1.0 : 0) : null);
    }
    return new SwitchingView(
        from,
        to,
        (long) (step * 1000),
        List.of(
            new StripView("Heater", "heater", heater),
            new StripView("Fan", "circulation", fan),
            new StripView("Humidifier", "humidifier", humidifier)),
        List.of(
            new ChangeView(to.minusSeconds(400), "Heater", true, "0.6 degrees below the middle"),
            new ChangeView(to.minusSeconds(1_900), "Heater", false, "in the middle of its range"),
            new ChangeView(to.minusSeconds(5_200), "Humidifier", false, "humidity is in range")));
  }

  @Override
  public MarksView marks(String room, Instant from, Instant to) {
    return new MarksView(
        from,
        to,
        List.of(
            new CalledView(
                "too-dry@" + room,
                "Too dry",
                room,
                null,
                false,
                to.minus(Duration.ofHours(6)),
                to.minus(Duration.ofHours(5))),
            new CalledView(
                "probe-silent@" + room + "/shelf",
                "Probe silent",
                room,
                "shelf",
                true,
                to.minus(Duration.ofHours(2)),
                null)),
        List.of(
            new MovedView(
                to.minus(Duration.ofHours(12)), "K4T", "Kabocha", "Winterglut", true, null),
            new MovedView(
                to.minus(Duration.ofHours(3)), "D1", "Delicata", "Striped Otter", false, "porch")));
  }

  @Override
  public void samples(String room, Instant from, Instant to, Samples samples) {
    for (long s = from.getEpochSecond(); s < to.getEpochSecond(); s += 600) {
      samples.sample(1000 * s, 27.41, s % 1_200 == 0 ? 79.25 : Double.NaN);
    }
  }

  @Override
  public Instant now() {
    return now;
  }

  private LineView line(Instant from, Instant to, int slots, DoubleUnaryOperator of) {
    List<Double> seconds = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    double step = Duration.between(from, to).toMillis() / 1000.0 / slots;
    for (int i = 0; i < slots; i++) {
      double t = from.getEpochSecond() + i * step;
      boolean known = isKnown(t);
      if (known || (!values.isEmpty() && values.get(values.size() - 1) != null)) {
        seconds.add(Math.round(i * step * 1000) / 1000.0);
        values.add(known ? (Double) (Math.round(of.applyAsDouble(t) * 100) / 100.0) : null);
      }
    }
    return new LineView(seconds, values);
  }

  private boolean isKnown(double t) {
    double ago = now.getEpochSecond() - t;
    return ago >= 0 && ago < RECORD.toSeconds() && (ago < 7 * 3_600 || ago > 10 * 3_600);
  }

  private static double wave(double seconds, double days) {
    return Math.sin(2 * Math.PI * seconds / (DAY * days));
  }
}
