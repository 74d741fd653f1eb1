package rindward.controller.daemon;

import java.util.ArrayList;
import java.util.List;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.Building;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.hardware.shed.BenchmarkShed;
import rindward.hardware.shed.Equipment;
import rindward.hardware.shed.ProbePlace;
import rindward.hardware.shed.ProbePlan;
import rindward.hardware.shed.RelayPlan;
import rindward.hardware.shed.RoomPlan;
import rindward.hardware.shed.ShedModel;
import rindward.hardware.shed.ShedPlan;
import rindward.hardware.shed.SimulatedShed;
import rindward.hardware.shed.Weather;

/** Builds the simulated shed that a settings file describes. */
public final class SimulatedBoard {
  /** Between one room and the next, W/K. */
  private static final double PARTITION_W_PER_K = 3.8;

  private static final double MODERATE_START_C = 12;
  private static final double MODERATE_START_PCT = 60;

  private SimulatedBoard() {}

  /** Opens the shed, every output off, in the given weather. */
  public static SimulatedShed open(Settings settings, Weather weather, Time time) {
    BenchmarkShed built =
        settings.simulation().building() == Building.BARE_BOARDS
            ? BenchmarkShed.BARE_BOARDS
            : BenchmarkShed.STANDARD;
    RoomPlan pattern = built.plan().rooms().get(0);
    List<RoomPlan> rooms = new ArrayList<>();
    for (Room room : settings.rooms()) {
      rooms.add(pattern.named(room.name()).withEquipment(equipment(settings, room.name())));
    }
    List<ProbePlan> probes =
        settings.probes().stream()
            .map(
                p ->
                    ProbePlan.of(
                        p.name(),
                        p.room().isEmpty() ? settings.rooms().get(0).name() : p.room(),
                        place(p.place())))
            .toList();
    List<RelayPlan> relays =
        settings.outputs().stream()
            .map(o -> new RelayPlan(o.name(), o.room(), output(settings, o).kind()))
            .toList();
    ShedPlan plan = new ShedPlan(rooms, PARTITION_W_PER_K, probes, relays);
    return new SimulatedShed(
        new ShedModel(plan, MODERATE_START_C, MODERATE_START_PCT),
        weather,
        settings.simulation().seed(),
        () -> time.now().at().toEpochMilli());
  }

  private static ProbePlace place(rindward.controller.room.ProbePlace place) {
    return switch (place) {
      case AIR -> ProbePlace.AIR;
      case CORNER -> ProbePlace.CORNER;
      case PULP -> ProbePlace.PULP;
      case OUTDOOR -> ProbePlace.OUTDOOR;
    };
  }

  private static Output output(Settings settings, OutputSetting output) {
    return settings.rooms().stream()
        .flatMap(r -> r.outputs().values().stream())
        .filter(o -> o.name().equals(output.name()))
        .findFirst()
        .orElseThrow();
  }

  private static Equipment equipment(Settings settings, String room) {
    Equipment equipment = Equipment.NONE;
    for (OutputSetting output : settings.outputs()) {
      if (output.room().equals(room)) {
        equipment = with(equipment, output(settings, output));
      }
    }
    return equipment;
  }

  private static Equipment with(Equipment before, Output output) {
    double capacity = output.capacity() / 1000.0;
    return switch (output.kind()) {
      case HEATER -> before.withHeater(output.powerW());
      case CIRCULATION -> before.withCirculation(output.powerW());
      case EXHAUST -> before.withExhaust(capacity, output.powerW());
      case HUMIDIFIER -> before.withHumidifier(capacity, output.powerW());
      case DEHUMIDIFIER -> before.withDehumidifier(capacity, output.powerW());
      case COOLER -> before.withCooler(capacity, capacity / Math.max(1, output.powerW()));
    };
  }
}
