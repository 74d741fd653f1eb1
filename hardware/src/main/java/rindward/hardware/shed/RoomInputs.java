package rindward.hardware.shed;

import rindward.hardware.OutputKind;

/**
 * What is switched on in one room, as shares of full output in 0..1, and how far its door stands
 * open. A relay gives 0 or 1; anything between is an ideal modulating device. Not thread-safe.
 */
public final class RoomInputs {
  double heater;
  double circulation;
  double exhaust;
  double humidifier;
  double dehumidifier;
  double cooler;
  double doorOpen;

  /** Sets the duty of every output of one kind. */
  public void set(OutputKind kind, double duty) {
    if (!(duty >= 0 && duty <= 1)) {
      throw new IllegalArgumentException(
          "duty of the " + kind.word() + " was " + duty + " but it must be 0..1");
    }
    switch (kind) {
      case HEATER -> heater = duty;
      case CIRCULATION -> circulation = duty;
      case EXHAUST -> exhaust = duty;
      case HUMIDIFIER -> humidifier = duty;
      case DEHUMIDIFIER -> dehumidifier = duty;
      case COOLER -> cooler = duty;
    }
  }

  /** Returns the duty of one kind. */
  public double duty(OutputKind kind) {
    return switch (kind) {
      case HEATER -> heater;
      case CIRCULATION -> circulation;
      case EXHAUST -> exhaust;
      case HUMIDIFIER -> humidifier;
      case DEHUMIDIFIER -> dehumidifier;
      case COOLER -> cooler;
    };
  }

  /** Opens the door by a share of its width, 0..1. */
  public void openDoor(double share) {
    doorOpen = share;
  }
}
