package rindward.hardware.shed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rindward.hardware.Reading;
import rindward.hardware.shed.ShedFault.Kind;

/** Each fault has an effect that somebody could notice, and is gone when it is mended. */
class ShedFaultTest {
  private static final String AIR = "storage-air";
  private static final String HEATER = "storage-heater";
  private static final String EXHAUST = "storage-exhaust";

  private final AtomicLong millis =
      new AtomicLong(Instant.parse("2026-11-01T12:00:00Z").toEpochMilli());
  private final Weather frost = at -> new OutdoorAir(-5, 300, 101325, 3, 800, 8);
  private SimulatedShed shed;

  @BeforeEach
  void openShed() {
    ShedPlan plan = BenchmarkShed.STANDARD.plan();
    ShedPlan exact =
        plan.with(
            plan.probes().stream().map(p -> p.withErrors(ProbeErrors.NONE)).toList(),
            plan.relays());
    shed = new SimulatedShed(new ShedModel(exact, 12, 60), frost, 1, millis::get);
    shed.load("storage", FruitLoad.winterSquash("SQ", 400, 12));
  }

  private void pass(int minutes) {
    millis.addAndGet(minutes * 60_000L);
  }

  private Reading read(String probe) throws IOException {
    return shed.probe(probe).read();
  }

  private double airC() {
    return shed.truth("storage").airC();
  }

  @Test
  void silentProbe_saysSoUntilMended() throws IOException {
    ShedFault silent = ShedFault.of(Kind.PROBE_SILENT, AIR);
    shed.inject(silent);
    assertThatThrownBy(() -> read(AIR))
        .isInstanceOf(IOException.class)
        .hasMessage("probe storage-air does not answer");
    assertThat(shed.faults()).containsExactly(silent);
    shed.clear(silent);
    assertThat(read(AIR).temperatureMilliC()).isEqualTo(12000);
  }

  @Test
  void frozenProbe_repeatsItsLastReadingWhileTheRoomCools() throws IOException {
    Reading last = read(AIR);
    shed.inject(ShedFault.of(Kind.PROBE_FROZEN, AIR));
    pass(120);
    assertThat(read(AIR)).isEqualTo(last);
    assertThat(airC()).isLessThan(11.5);
  }

  @Test
  void jumpingProbe_isOffNowAndThen() throws IOException {
    shed.inject(ShedFault.of(Kind.PROBE_JUMPS, AIR, 8));
    int jumps = 0;
    for (int i = 0; i < 100; i++) {
      jumps += read(AIR).temperatureMilliC() == 20000 ? 1 : 0;
    }
    assertThat(jumps).isBetween(5, 40);
  }

  @Test
  void biasedProbe_isOffByTheAmount() throws IOException {
    shed.inject(ShedFault.of(Kind.PROBE_BIASED, AIR, 1.5));
    shed.inject(ShedFault.of(Kind.HUMIDITY_BIASED, AIR, -10));
    assertThat(read(AIR)).isEqualTo(new Reading(13500, 50000));
  }

  @Test
  void wettedProbe_reads100() throws IOException {
    shed.inject(ShedFault.of(Kind.HUMIDITY_STUCK_AT_100, AIR));
    assertThat(read(AIR).humidityMilliPct()).isEqualTo(100_000);
  }

  @Test
  void impossibleValue_isReadAsItIs() throws IOException {
    shed.inject(ShedFault.of(Kind.PROBE_IMPOSSIBLE, "storage-pulp", 85));
    assertThat(read("storage-pulp").temperatureMilliC()).isEqualTo(85_000);
  }

  @Test
  void swappedProbes_showEachOthersRoom() throws IOException {
    shed.inject(ShedFault.swapped(AIR, "outdoor"));
    assertThat(read(AIR).temperatureMilliC()).isEqualTo(-5000);
    assertThat(read("outdoor").temperatureMilliC()).isEqualTo(12000);
  }

  @Test
  void outdoorProbeInTheSun_readsTooWarm() throws IOException {
    shed.inject(ShedFault.of(Kind.PROBE_IN_SUN, "outdoor", 10));
    assertThat(read("outdoor").temperatureMilliC()).isEqualTo(3000);
  }

  @Test
  void probeInThePlume_readsTooWarmWhileTheHeaterRuns() throws IOException {
    shed.inject(ShedFault.of(Kind.PROBE_IN_PLUME, AIR, 6));
    assertThat(read(AIR).temperatureMilliC()).isEqualTo(12000);
    shed.relay(HEATER).set(true);
    assertThat(read(AIR).temperatureMilliC()).isEqualTo(18000);
  }

  @Test
  void weldedHeater_heatsThoughSwitchedOff() throws IOException {
    shed.inject(ShedFault.of(Kind.OUTPUT_STUCK_ON, HEATER));
    shed.relay(HEATER).set(false);
    pass(60);
    assertThat(airC()).isGreaterThan(14);
    assertThat(shed.meter(HEATER).hoursOn()).isEqualTo(1);
  }

  @Test
  void deadElement_doesNotHeatThoughSwitchedOn() throws IOException {
    shed.inject(ShedFault.of(Kind.OUTPUT_DEAD, HEATER));
    shed.relay(HEATER).set(true);
    pass(60);
    assertThat(airC()).isLessThan(12);
    assertThat(shed.meter(HEATER).kWh()).isZero();
  }

  @Test
  void deadFan_leavesTheCornerCold() throws IOException {
    shed.relay("storage-circulation").set(true);
    pass(10);
    int mixed = read(AIR).temperatureMilliC() - read("storage-corner").temperatureMilliC();
    shed.inject(ShedFault.of(Kind.OUTPUT_DEAD, "storage-circulation"));
    pass(10);
    int still = read(AIR).temperatureMilliC() - read("storage-corner").temperatureMilliC();
    assertThat(still).isGreaterThan(2 * mixed);
  }

  @Test
  void exhaustStuckOpen_coolsTheRoom_andStuckClosedDoesNot() throws IOException {
    shed.inject(ShedFault.of(Kind.OUTPUT_STUCK_ON, EXHAUST));
    pass(10);
    double openC = airC();
    shed.clearFaults();
    openShed();
    shed.inject(ShedFault.of(Kind.OUTPUT_DEAD, EXHAUST));
    shed.relay(EXHAUST).set(true);
    pass(10);
    assertThat(airC()).isGreaterThan(openC + 1);
  }

  @Test
  void humidifierStuckOn_dampensTheRoom_andEmptyTankDoesNot() throws IOException {
    shed.inject(ShedFault.of(Kind.OUTPUT_STUCK_ON, "storage-humidifier"));
    pass(60);
    double dampPct = shed.truth("storage").relativeHumidityPct();
    openShed();
    shed.inject(ShedFault.of(Kind.OUTPUT_DEAD, "storage-humidifier"));
    shed.relay("storage-humidifier").set(true);
    pass(60);
    assertThat(shed.truth("storage").relativeHumidityPct()).isLessThan(dampPct - 5);
  }

  @Test
  void openDoor_coolsTheRoomWithinMinutes() {
    shed.inject(ShedFault.of(Kind.DOOR_OPEN, "storage", 0.5));
    pass(3);
    assertThat(airC()).isLessThan(8);
  }

  @Test
  void lostBoard_refusesAndKeepsItsContacts() throws IOException {
    shed.relay(HEATER).set(true);
    shed.inject(ShedFault.ofBoard(Kind.BOARD_LOST));
    assertThatThrownBy(() -> shed.relay(HEATER).set(false))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("its board does not answer");
    pass(60);
    assertThat(airC()).isGreaterThan(14);
  }

  @Test
  void lostRelay_refusesAlone() throws IOException {
    shed.inject(ShedFault.of(Kind.RELAY_LOST, HEATER));
    assertThatThrownBy(() -> shed.relay(HEATER).set(true)).isInstanceOf(IOException.class);
    shed.relay(EXHAUST).set(true);
    pass(1);
    assertThat(shed.meter(EXHAUST).switchings()).isEqualTo(1);
  }

  @Test
  void lostSupply_everythingIsOffAndNothingSaysSo() throws IOException {
    shed.inject(ShedFault.ofBoard(Kind.SUPPLY_LOST));
    shed.relay(HEATER).set(true);
    pass(60);
    assertThat(shed.meter(HEATER).hoursOn()).isZero();
  }

  @Test
  void faultOfNothing_isRefused() {
    assertThatThrownBy(() -> shed.inject(ShedFault.of(Kind.DOOR_OPEN, HEATER, 1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("target of DOOR_OPEN was 'storage-heater' but it must be one of");
  }
}
