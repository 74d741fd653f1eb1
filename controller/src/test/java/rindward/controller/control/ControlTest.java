package rindward.controller.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Purpose;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;
import rindward.hardware.Reading;

/** What the outputs of one room do, tick by tick. */
class ControlTest {
  private static final long SECOND = 1_000_000_000L;
  private static final Room STORE = room(false);

  private Memory memory = Memory.atStart(-1000 * SECOND);

  @Test
  void decide_coldRoom_heatsAndSaysWhy() {
    Ruling heater = decide(STORE, 10.0, 60, 0).get(OutputKind.HEATER);

    assertThat(heater.on()).isTrue();
    assertThat(heater.reason().sentence())
        .isEqualTo("Heating: it is 10 C and should stay above 12 C.");
  }

  @Test
  void decide_betweenStartAndStop_goesOnHeatingButDoesNotBegin() {
    assertThat(decide(STORE, 13.0, 60, 0).get(OutputKind.HEATER).on()).isFalse();
    assertThat(decide(STORE, 12.1, 60, 300).get(OutputKind.HEATER).on()).isTrue();
    assertThat(decide(STORE, 13.0, 60, 600).get(OutputKind.HEATER).on()).isTrue();
    assertThat(decide(STORE, 13.5, 60, 900).get(OutputKind.HEATER).on()).isFalse();
  }

  @Test
  void decide_warmAgainBeforeTheMinimumTime_staysOnToSpareItsContacts() {
    decide(STORE, 10.0, 60, 0);

    Ruling heater = decide(STORE, 14.0, 60, 30).get(OutputKind.HEATER);

    assertThat(heater.on()).isTrue();
    assertThat(heater.reason().sentence())
        .isEqualTo("Stays on for another 91 s to spare its contacts.");
    assertThat(decide(STORE, 14.0, 60, 120).get(OutputKind.HEATER).on()).isFalse();
  }

  @Test
  void decide_lastTrustedReadingLost_switchesEverythingOffAtOnce() {
    decide(STORE, 10.0, 50, 0);

    Map<OutputKind, Ruling> rulings =
        decide(STORE, Picture.of(List.of(), 30 * SECOND), 30).rulings();

    assertThat(rulings.values()).noneMatch(Ruling::on);
    assertThat(rulings.get(OutputKind.HEATER).reason().sentence())
        .isEqualTo("No probe in this room can be trusted, so nothing is switched on.");
  }

  @Test
  void decide_roomNotCommissioned_switchesNothing() {
    Map<OutputKind, Ruling> rulings = decide(room(true), 5.0, 40, 0);

    assertThat(rulings.values()).noneMatch(Ruling::on);
    assertThat(rulings.get(OutputKind.HEATER).reason().sentence())
        .isEqualTo("This room is only observed until it has been commissioned.");
  }

  @Test
  void decide_dryAndWarmEnough_humidifiesAndMovesTheAir() {
    Map<OutputKind, Ruling> rulings = decide(STORE, 13.0, 51, 0);

    assertThat(rulings.get(OutputKind.HUMIDIFIER).on()).isTrue();
    assertThat(rulings.get(OutputKind.CIRCULATION).on()).isTrue();
  }

  @Test
  void decide_dryButColderThanTheRange_doesNotHumidify() {
    assertThat(decide(STORE, 11.0, 40, 0).get(OutputKind.HUMIDIFIER).on()).isFalse();
  }

  @Test
  void decide_humidityNotMeasured_doesNotHumidify() {
    Picture warmthOnly =
        Picture.of(List.of(new ProbeReading("p", Reading.ofTemperature(13), 0, null)), 0);

    assertThat(decide(STORE, warmthOnly, 0).rulings().get(OutputKind.HUMIDIFIER).on()).isFalse();
  }

  private Map<OutputKind, Ruling> decide(
      Room room, double temperatureC, double humidityPct, long second) {
    Reading reading = Reading.of(temperatureC, humidityPct);
    long now = second * SECOND;
    return decide(room, Picture.of(List.of(new ProbeReading("p", reading, now, null)), now), second)
        .rulings();
  }

  private Decision decide(Room room, Picture picture, long second) {
    Tick now = new Tick(Instant.ofEpochSecond(second), second * SECOND);
    Decision decision = Control.decide(memory, room, picture, now);
    memory = decision.memory();
    return decision;
  }

  private static Room room(boolean observeOnly) {
    return new Room(
        "storage",
        Purpose.STORAGE,
        new Range(new Limits(12_000, 15_000), new Limits(50_000, 70_000)),
        Map.of(
            OutputKind.HEATER, output(OutputKind.HEATER, 120),
            OutputKind.HUMIDIFIER, output(OutputKind.HUMIDIFIER, 60),
            OutputKind.CIRCULATION, output(OutputKind.CIRCULATION, 60)),
        Accuracy.EXACT,
        observeOnly);
  }

  private static Output output(OutputKind kind, int minimumSeconds) {
    Duration minimum = Duration.ofSeconds(minimumSeconds);
    return new Output(kind.word(), kind, minimum, minimum);
  }
}
