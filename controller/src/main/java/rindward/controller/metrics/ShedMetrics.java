package rindward.controller.metrics;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Tags;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.util.List;
import java.util.function.ToDoubleFunction;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.crop.Limits;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.hardware.Thousandths;
import rindward.hardware.air.MoistAir;
import rindward.hardware.air.StandardAtmosphere;

/**
 * Binds the last snapshot to gauges. Every value is read from one immutable snapshot when it is
 * asked for; a value that was not measured, or of which nothing new is heard, is NaN, never zero.
 * Tags are bounded: rooms and outputs of the settings.
 */
final class ShedMetrics implements MeterBinder {
  private final List<Room> rooms;
  private final double pressurePa;
  private final ControlView control;

  ShedMetrics(List<Room> rooms, double altitudeM, ControlView control) {
    this.pressurePa = StandardAtmosphere.pressurePa(altitudeM);
    this.rooms = List.copyOf(rooms);
    this.control = control;
  }

  @Override
  public void bindTo(MeterRegistry registry) {
    Gauge.builder("rindward.control.answering", () -> control.silence() == null ? 1 : 0)
        .description("1 while something is heard of control")
        .register(registry);
    count(registry, "rindward.ticks", "ticks since the start", s -> s.tick());
    count(registry, "rindward.tick.overruns", "ticks skipped since the start", s -> s.overruns());
    Gauge.builder("rindward.store.healthy", () -> read(s -> s.store().isEmpty() ? 1 : 0))
        .description("1 while everything measured reaches the disk")
        .register(registry);
    rooms.forEach(room -> bindRoom(registry, room));
  }

  private void bindRoom(MeterRegistry registry, Room room) {
    Tags tags = Tags.of("room", room.name());
    room(
        registry,
        room.name(),
        "rindward.room.temperature.celsius",
        "working value",
        tags,
        s -> Thousandths.toDouble(s.picture().temperatureMilliC()));
    room(
        registry,
        room.name(),
        "rindward.room.humidity.percent",
        "working value",
        tags,
        s -> Thousandths.toDouble(s.picture().humidityMilliPct()));
    room(
        registry,
        room.name(),
        "rindward.room.dew.point.celsius",
        "of the working values",
        tags,
        s -> dewPointC(s.picture()));
    room(
        registry,
        room.name(),
        "rindward.room.reading.age.seconds",
        "oldest reading in use",
        tags,
        s -> s.picture().oldestSeconds());
    edge(registry, "rindward.room.target.temperature.celsius", tags, room.range().temperature());
    edge(registry, "rindward.room.target.humidity.percent", tags, room.range().humidity());
    for (Output output : room.outputs().values()) {
      room(
          registry,
          room.name(),
          "rindward.output.on",
          "1 while it is commanded on",
          tags.and("output", output.name(), "kind", output.kind().word()),
          s -> isOn(s, output) ? 1 : 0);
    }
  }

  private double dewPointC(Picture picture) {
    return picture.hasTemperature() && picture.humidityMilliPct() > 0
        ? new MoistAir(
                Thousandths.toDouble(picture.temperatureMilliC()),
                Thousandths.toDouble(picture.humidityMilliPct()),
                pressurePa)
            .dewPointC()
        : Double.NaN;
  }

  private static boolean isOn(RoomState state, Output output) {
    OutputDecision ruling = state.rulings().get(output.kind());
    return ruling != null && ruling.on();
  }

  private static void edge(MeterRegistry registry, String name, Tags tags, Limits limits) {
    String description = "edges of the range that the room is to be in";
    Gauge.builder(name, () -> Thousandths.toDouble(limits.low()))
        .description(description)
        .tags(tags.and("edge", "low"))
        .register(registry);
    Gauge.builder(name, () -> Thousandths.toDouble(limits.high()))
        .description(description)
        .tags(tags.and("edge", "high"))
        .register(registry);
  }

  private void room(
      MeterRegistry registry,
      String room,
      String name,
      String description,
      Tags tags,
      ToDoubleFunction<RoomState> value) {
    Gauge.builder(name, () -> read(s -> of(s, room, value)))
        .description(description)
        .tags(tags)
        .register(registry);
  }

  private void count(
      MeterRegistry registry,
      String name,
      String description,
      ToDoubleFunction<ShedSnapshot> value) {
    FunctionCounter.builder(
            name,
            control,
            source -> {
              ControlReport report = source.latest();
              return report == null ? 0 : value.applyAsDouble(report.snapshot());
            })
        .description(description)
        .register(registry);
  }

  /** By its name: control may run by other settings than those of whoever counts. */
  private static double of(ShedSnapshot snapshot, String room, ToDoubleFunction<RoomState> value) {
    return snapshot.rooms().stream()
        .filter(state -> state.room().name().equals(room))
        .mapToDouble(value)
        .findFirst()
        .orElse(Double.NaN);
  }

  private double read(ToDoubleFunction<ShedSnapshot> value) {
    ControlReport report = control.latest();
    return report == null || control.silence() != null
        ? Double.NaN
        : value.applyAsDouble(report.snapshot());
  }
}
