package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Contact;
import rindward.controller.room.HeatTrust;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.controller.room.RoomPurpose;
import rindward.hardware.OutputKind;
import rindward.hardware.Relay;

class RelayDriverTest {
  private static final OutputDecision ON =
      new OutputDecision(true, Precedence.ECONOMY, new Reason(ReasonCode.COLDER_THAN_WANTED, 0, 0));

  private final Set<String> on = new HashSet<>();
  private boolean fanFails;
  private final RelayDriver relays =
      new RelayDriver(Map.of("heater", relay("heater"), "fan", relay("fan")));

  @Test
  void fanCannotBeSwitched_theHeaterItCarriesForIsKeptOff() {
    fanFails = true;
    on.add("heater");

    Map<OutputKind, String> failures = relays.apply(room(true), both());

    assertThat(on).isEmpty();
    assertThat(failures)
        .containsEntry(OutputKind.CIRCULATION, "the fan's relay does not answer")
        .containsEntry(
            OutputKind.HEATER, "it is kept off because the fan that moves its heat has failed");
  }

  @Test
  void fanCannotBeSwitched_aHeaterWithItsOwnGoesOn() {
    fanFails = true;

    relays.apply(room(false), both());

    assertThat(on).containsExactly("heater");
  }

  private static Map<OutputKind, OutputDecision> both() {
    return Map.of(OutputKind.HEATER, ON, OutputKind.CIRCULATION, ON);
  }

  private static Room room(boolean needsFan) {
    Map<OutputKind, Output> outputs = new HashMap<>();
    outputs.put(OutputKind.HEATER, output("heater", OutputKind.HEATER));
    outputs.put(OutputKind.CIRCULATION, output("fan", OutputKind.CIRCULATION));
    return new Room(
            "store",
            RoomPurpose.STORAGE,
            new Range(new Limits(12_000, 15_000), new Limits(50_000, 70_000)),
            outputs,
            Accuracy.EXACT,
            0,
            0,
            false)
        .withHeatTrust(new HeatTrust(needsFan, false));
  }

  private static Output output(String name, OutputKind kind) {
    return new Output(name, kind, Contact.RELAY, Duration.ZERO, Duration.ZERO, 0, 0);
  }

  private Relay relay(String name) {
    return new Relay() {
      @Override
      public String name() {
        return name;
      }

      @Override
      public void set(boolean isOn) throws IOException {
        if (name.equals("fan") && fanFails) {
          throw new IOException("the fan's relay does not answer");
        }
        if (isOn) {
          on.add(name);
        } else {
          on.remove(name);
        }
      }
    };
  }
}
