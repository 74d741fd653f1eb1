package rindward.hardware.shed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import rindward.hardware.Reading;

class SimulatedShedTest {
  private static final String AIR = "storage-air";

  private final AtomicLong millis =
      new AtomicLong(Instant.parse("2026-11-01T12:00:00Z").toEpochMilli());
  private final ShedModel model = new ShedModel(BenchmarkShed.STANDARD.plan(), 12, 65);
  private final SimulatedShed shed =
      new SimulatedShed(model, GeneratedWeather.temperate(1), 1, millis::get);

  private void pass(double hours) {
    millis.addAndGet((long) (hours * 3_600_000));
  }

  @Test
  void heaterOn_anHourLater_airIsWarmerAndTheMeterHasRun() throws IOException {
    Reading before = shed.probe(AIR).read();
    shed.relay("storage-heater").set(true);
    pass(1);
    assertThat(shed.probe(AIR).read().temperatureMilliC())
        .isGreaterThan(before.temperatureMilliC() + 2000);
    OutputMeter meter = shed.meter("storage-heater");
    assertThat(meter.switchings()).isEqualTo(1);
    assertThat(meter.hoursOn()).isEqualTo(1);
    assertThat(meter.kWh()).isCloseTo(0.75, within(1e-9));
  }

  @Test
  void close_everyOutputIsOff() throws IOException {
    shed.relay("storage-heater").set(true);
    shed.close();
    pass(1);
    assertThat(shed.meter("storage-heater").hoursOn()).isZero();
  }

  @Test
  void unknownNames_areRefusedInOneSentence() {
    assertThatThrownBy(() -> shed.probe("attic"))
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("probe was 'attic' but it must be one of curing-air, ");
    assertThatThrownBy(() -> shed.relay("attic")).isInstanceOf(IOException.class);
  }

  @Test
  void pulpProbe_hasNoHumidityAndShowsTheCoreOfTheFruit() throws IOException {
    shed.load("storage", FruitLoad.winterSquash("KAB-1", 400, 25));
    pass(0.25);
    Reading pulp = shed.probe("storage-pulp").read();
    assertThat(pulp.hasHumidity()).isFalse();
    assertThat(pulp.temperatureMilliC()).isBetween(24000, 25100);
  }

  @Test
  void move_fruitTakesItsWarmthAlong() {
    shed.load("curing", FruitLoad.winterSquash("KAB-1", 400, 27));
    shed.move("KAB-1", "curing", "storage");
    assertThat(shed.truth("storage").coldestFruitC()).isCloseTo(27, within(0.01));
    assertThat(shed.truth("curing").coldestFruitC()).isNaN();
  }

  @Test
  void timeThatGoesBackwards_isIgnored() throws IOException {
    Reading before = shed.probe(AIR).read();
    millis.addAndGet(-60_000);
    assertThat(shed.probe(AIR).read().temperatureMilliC())
        .isCloseTo(before.temperatureMilliC(), within(200));
  }

  private static org.assertj.core.data.Offset<Double> within(double offset) {
    return org.assertj.core.data.Offset.offset(offset);
  }

  private static org.assertj.core.data.Offset<Integer> within(int offset) {
    return org.assertj.core.data.Offset.offset(offset);
  }
}
