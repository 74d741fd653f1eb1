package rindward.controller.control;

import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.estimate.AirEstimate;
import rindward.controller.estimate.OutdoorEstimate;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;
import rindward.hardware.air.SaturationPressure;

/**
 * All that a rule may look at. Estimates are rounded to thousandths here, once.
 *
 * @param memory what the last decision left, with this tick's views of the air
 * @param room what the room has
 * @param demand what is asked of it
 * @param range the range that is controlled to now; differs from the ordered one while it slides
 * @param target where in that range the room is kept
 * @param picture what the probes say
 * @param now the tick's time
 * @param tickSeconds time since the last decision
 */
public record ControlInput(
    ControlMemory memory,
    Room room,
    RoomDemand demand,
    Range range,
    SetpointBand target,
    Picture picture,
    Tick now,
    double tickSeconds) {

  /** Tells whether an output runs at this moment. */
  public boolean isOn(OutputKind kind) {
    return memory.switched(kind).on();
  }

  /** Returns for how long an output has been as it is. */
  public double secondsSince(OutputKind kind) {
    return (now.nanos() - memory.switched(kind).sinceNanos()) / 1e9;
  }

  /** Tells whether anything is known of the air. */
  public boolean knowsAir() {
    return picture.hasTemperature() && memory.estimate().air() != null;
  }

  /** Tells whether humidity is known too. */
  public boolean knowsVapour() {
    return knowsAir() && picture.hasHumidity() && !Double.isNaN(air().vapourPa());
  }

  public AirEstimate air() {
    AirEstimate air = memory.estimate().air();
    if (air == null) {
      throw new IllegalStateException("nothing is known of the air of room " + room.name());
    }
    return air;
  }

  public OutdoorEstimate outdoor() {
    return memory.estimate().outdoor();
  }

  /** Returns the air's temperature now, probe lag made up for. */
  public int airMilliC() {
    return Thousandths.of(air().airC());
  }

  /** Returns the air's temperature at the next tick if it goes on as it does. */
  public int soonMilliC() {
    return Thousandths.of(air().airC() + air().slopeCPerS() * tickSeconds);
  }

  /** Returns what the air has been like over the last hour. */
  public int slowMilliC() {
    return Thousandths.of(air().slowC());
  }

  /** Returns the temperature of the outdoor air; {@link Thousandths#NONE} if unknown. */
  public int outdoorMilliC() {
    return outdoor().isKnown() ? Thousandths.of(outdoor().nowC()) : Thousandths.NONE;
  }

  /** Returns how long an output runs at least, once it is on. */
  public double minimumOnSeconds(OutputKind kind) {
    Output output = room.outputs().get(kind);
    return output == null ? 0 : output.minimumOn().toMillis() / 1000.0;
  }

  /** Returns how much water the air should hold. */
  public VapourPressureBand waterBand() {
    return VapourPressureBand.of(sureHumidity(), air());
  }

  /** Returns the humidity that much vapour means in the middle of the swing, in thousandths. */
  public int middleHumidity(double vapourPa) {
    double middleC = (air().lowC() + air().highC()) / 2;
    return Thousandths.of(100 * vapourPa / SaturationPressure.overIceOrWaterPa(middleC));
  }

  /** Returns the humidity limits, each moved inward by what the probes may be wrong by. */
  Limits sureHumidity() {
    int doubt = Math.min(room.accuracy().humidityMilliPct(), range.humidity().width() / 4);
    return new Limits(range.humidity().low() + doubt, range.humidity().high() - doubt);
  }
}
