package rindward.controller.room;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import rindward.controller.crop.Range;
import rindward.controller.judge.Surroundings;
import rindward.controller.ledger.Accuracy;
import rindward.hardware.OutputKind;

/**
 * One room as the settings describe it.
 *
 * @param name its name, also a place a lot can be in
 * @param purpose what it is used for
 * @param range the air it should have
 * @param outputs what it can switch, by kind and in the order of the kinds; any subset
 * @param accuracy the accuracy of its least accurate probe
 * @param volumeMilliM3 its air, in thousandths of a cubic metre; 0 if nobody said
 * @param slideMilliCPerDay how fast its range may come down when it was changed; 0 at once
 * @param observeOnly whether its outputs stay off, whatever is decided
 * @param heatTrust on what trust it is heated
 */
public record Room(
    String name,
    RoomPurpose purpose,
    Range range,
    Map<OutputKind, Output> outputs,
    Accuracy accuracy,
    int volumeMilliM3,
    int slideMilliCPerDay,
    boolean observeOnly,
    HeatTrust heatTrust) {

  /** Eight minutes: a small room with a small fan (judgement). */
  private static final double USUAL_SECONDS_A_VOLUME = 480;

  public Room {
    outputs = Collections.unmodifiableMap(new TreeMap<>(outputs));
  }

  /** A room that is heated on no more than the usual trust. */
  public Room(
      String name,
      RoomPurpose purpose,
      Range range,
      Map<OutputKind, Output> outputs,
      Accuracy accuracy,
      int volumeMilliM3,
      int slideMilliCPerDay,
      boolean observeOnly) {
    this(
        name,
        purpose,
        range,
        outputs,
        accuracy,
        volumeMilliM3,
        slideMilliCPerDay,
        observeOnly,
        HeatTrust.USUAL);
  }

  /** Returns what the room offers the lots in it. */
  public Surroundings surroundings() {
    return new Surroundings(
        name, range, purpose == RoomPurpose.CURING, accuracy.temperatureMilliC());
  }

  /** Tells whether the room has an output of that kind. */
  public boolean has(OutputKind kind) {
    return outputs.containsKey(kind);
  }

  /** Returns the same room with other outputs. */
  public Room withOutputs(Map<OutputKind, Output> others) {
    return new Room(
        name,
        purpose,
        range,
        others,
        accuracy,
        volumeMilliM3,
        slideMilliCPerDay,
        observeOnly,
        heatTrust);
  }

  /** Returns the same room, only observed or not. */
  public Room observed(boolean only) {
    return new Room(
        name, purpose, range, outputs, accuracy, volumeMilliM3, slideMilliCPerDay, only, heatTrust);
  }

  /** Returns the same room, heated on other trust. */
  public Room withHeatTrust(HeatTrust other) {
    return new Room(
        name,
        purpose,
        range,
        outputs,
        accuracy,
        volumeMilliM3,
        slideMilliCPerDay,
        observeOnly,
        other);
  }

  /** Returns how long the exhaust takes to change the room's air once. */
  public double secondsAVolume() {
    Output exhaust = outputs.get(OutputKind.EXHAUST);
    return exhaust == null || exhaust.capacity() == 0 || volumeMilliM3 == 0
        ? USUAL_SECONDS_A_VOLUME
        : (double) volumeMilliM3 / exhaust.capacity();
  }
}
