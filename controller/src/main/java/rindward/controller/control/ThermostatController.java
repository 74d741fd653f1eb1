package rindward.controller.control;

import java.util.EnumMap;
import java.util.Map;
import rindward.controller.crop.Range;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.hardware.OutputKind;

/**
 * What a plain on/off thermostat and humidistat would do, to compare with: each holds one point of
 * the range with a dead band, and neither knows of the other, of the fruit or of the weather.
 *
 * @param temperaturePlace where in the temperature range the point lies, 0..1
 * @param temperatureBandMilliK width of the thermostat's dead band
 * @param humidityPlace where in the humidity range the point lies, 0..1
 * @param humidityBandMilliPct width of the humidistat's dead band
 */
public record ThermostatController(
    double temperaturePlace,
    int temperatureBandMilliK,
    double humidityPlace,
    int humidityBandMilliPct)
    implements Controller {

  /** The middle of the range, with dead bands of 1 K and 5 %. */
  public static final ThermostatController USUAL = new ThermostatController(0.5, 1_000, 0.5, 5_000);

  @Override
  public RoomDecision decide(
      ControlMemory memory,
      Room room,
      RoomDemand demand,
      Picture picture,
      Picture outdoors,
      Tick now) {
    Map<OutputKind, OutputDecision> rulings = new EnumMap<>(OutputKind.class);
    for (Output output : room.outputs().values()) {
      rulings.put(output.kind(), ruling(memory, demand.range(), picture, output.kind()));
    }
    OutputDecision circulation = rulings.get(OutputKind.CIRCULATION);
    OutputDecision heater = rulings.get(OutputKind.HEATER);
    OutputDecision humidifier = rulings.get(OutputKind.HUMIDIFIER);
    if (circulation != null) {
      boolean moves = (heater != null && heater.on()) || (humidifier != null && humidifier.on());
      rulings.put(
          OutputKind.CIRCULATION,
          new OutputDecision(moves, Precedence.ECONOMY, Reason.of(ReasonCode.SHARES_OUT)));
    }
    return new RoomDecision(
        rulings, memory.after(rulings, memory.estimate(), 0, now.nanos()), null);
  }

  private OutputDecision ruling(
      ControlMemory memory,
      @org.jspecify.annotations.Nullable Range range,
      Picture picture,
      OutputKind kind) {
    boolean isOn = memory.switched(kind).on();
    boolean on = false;
    if (range != null && picture.hasTemperature()) {
      int warmth = point(range.temperature().low(), range.temperature().high(), temperaturePlace);
      int half = temperatureBandMilliK / 2;
      int measured = picture.temperatureMilliC();
      on =
          switch (kind) {
            case HEATER -> measured < (isOn ? warmth + half : warmth - half);
            case COOLER -> measured > (isOn ? warmth - half : warmth + half);
            case HUMIDIFIER, DEHUMIDIFIER, EXHAUST -> humidistat(range, picture, kind, isOn);
            case CIRCULATION -> false;
          };
    }
    return new OutputDecision(
        on, Precedence.ECONOMY, Reason.of(on ? ReasonCode.ON_PLAINLY : ReasonCode.OFF_PLAINLY));
  }

  private boolean humidistat(Range range, Picture picture, OutputKind kind, boolean isOn) {
    if (!picture.hasHumidity()) {
      return false;
    }
    int damp = point(range.humidity().low(), range.humidity().high(), humidityPlace);
    int half = humidityBandMilliPct / 2;
    int measured = picture.humidityMilliPct();
    return kind == OutputKind.HUMIDIFIER
        ? measured < (isOn ? damp + half : damp - half)
        : measured > (isOn ? damp + half : damp + humidityBandMilliPct);
  }

  private static int point(int low, int high, double place) {
    return (int) Math.round(low + place * (high - low));
  }
}
