package rindward.controller.desk;

import java.time.Duration;
import java.util.Map;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Contact;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.controller.room.RoomPurpose;
import rindward.hardware.OutputKind;

/** The room that the desk's tests show: one that cures, with a heater and nothing else. */
final class CuringRoom {
  private CuringRoom() {}

  /**
   * Returns the room {@code curing}, kept at 26 to 29 C and 75 to 85 %, with its {@code warmer}.
   */
  static Room withAHeater() {
    Output heater =
        new Output(
            "warmer", OutputKind.HEATER, Contact.values()[0], Duration.ZERO, Duration.ZERO, 0, 0);
    return new Room(
        "curing",
        RoomPurpose.CURING,
        new Range(new Limits(26_000, 29_000), new Limits(75_000, 85_000)),
        Map.of(OutputKind.HEATER, heater),
        new Accuracy(200, 2_000),
        0,
        0,
        false);
  }
}
