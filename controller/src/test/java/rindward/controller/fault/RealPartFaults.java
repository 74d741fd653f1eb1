package rindward.controller.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.fault.TrialShed.said;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.awaitility.Awaitility;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.FakeMachine;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.BoardFile;
import rindward.controller.settings.OffList;
import rindward.controller.settings.Settings;
import rindward.hardware.Board;
import rindward.hardware.OutputKind;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.Relay;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.SimulatedShed;

/** Buses, the broker, and a process that is killed: on real drivers with stand-ins beneath them. */
final class RealPartFaults {
  private static final Instant START = Instant.parse("2027-01-12T06:00:00Z");

  private RealPartFaults() {}

  static List<Fault> all() {
    return List.of(
        new Fault("1-Wire bus held low", RealPartFaults::busLow),
        new Fault("slow bus", RealPartFaults::slowBus),
        new Fault("broker down", RealPartFaults::brokerDown),
        new Fault("command kept by the broker", RealPartFaults::keptCommand),
        new Fault("process killed with the heater on", RealPartFaults::killed));
  }

  private static FaultRow busLow(Path folder) throws Exception {
    Time.Stepped time = new Time.Stepped(START);
    Path device = Files.createDirectories(folder.resolve("sys/bus/w1/devices/" + BoardFile.SERIAL));
    Files.writeString(
        device.resolve("w1_slave"),
        "00 00 00 00 00 00 00 00 00 : crc=00 YES\n00 00 00 00 00 00 00 00 00 t=0\n");
    Settings settings =
        BoardFile.in(folder, BoardFile.AIR_ON_1_WIRE, BoardFile.heater(17)).settings();
    try (Daemon daemon = daemon(settings, new FakeMachine(folder.resolve("sys"), time), time)) {
      step(daemon, time, 3);
      RoomState room = daemon.latest().rooms().get(0);
      assertThat(room.picture().hasTemperature()).isFalse();
      assertThat(room.rulings().get(OutputKind.HEATER).on()).isFalse();
      return new FaultRow(
          "1-Wire data wire held low: zeros that pass the checksum",
          "the value is refused; without another probe everything in the room is off",
          "at once",
          "\"Probe air ...\" with the driver's sentence",
          "decides anew with the first reading");
    }
  }

  private static FaultRow slowBus(Path folder) throws Exception {
    Time.Stepped time = new Time.Stepped(START);
    Settings settings = TrialShed.settings(folder, "");
    SimulatedShed shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time);
    CountDownLatch hangs = new CountDownLatch(1);
    boolean[] isHanging = {false};
    Board board = new HangingBoard(shed, hangs, isHanging);
    try (Daemon daemon = new Daemon(settings, board, time, true)) {
      do {
        step(daemon, time, 1);
      } while (!isHeated(daemon));
      isHanging[0] = true;
      int ticks = 0;
      while (isHeated(daemon)) {
        step(daemon, time, 1);
        ticks++;
      }
      hangs.countDown();
      Duration off = settings.tick().multipliedBy(ticks);
      assertThat(off).isLessThanOrEqualTo(Duration.ofSeconds(30));
      return new FaultRow(
          "a bus hangs in the middle of a reading",
          "no tick waits for it longer than 0.8 s; its probes grow silent, the others are read on;"
              + " a tick that comes too late all the same is counted, not made up for",
          "heat off after " + said(off) + " (bound 30 s)",
          "as for a silent probe; ticks that came too late are counted on the page",
          "its next round of readings is used");
    }
  }

  private static FaultRow brokerDown(Path folder) throws Exception {
    Time.Stepped time = new Time.Stepped(START);
    Settings settings =
        BoardFile.in(folder, AIR_ON_NETWORK, BoardFile.HEATER_ON_NETWORK).settings();
    try (Daemon daemon = daemon(settings, new FakeMachine(folder, time), time)) {
      step(daemon, time, 3);
      RoomState room = daemon.latest().rooms().get(0);
      assertThat(room.rulings().get(OutputKind.HEATER).on()).isFalse();
      assertThat(room.picture().troubles())
          .singleElement()
          .asString()
          .contains("Probe air has given no value yet");
      assertThat(room.failures().get(OutputKind.HEATER)).contains("broker");
      return new FaultRow(
          "broker down",
          "network probes are silent after their `max_age` (at most 20 s where they hold heat) and"
              + " the room goes off; network relays go off by their own timer, at most 60 s; wired"
              + " rooms do not notice",
          "30 s for probes, 60 s for relays",
          "the probe: \"has given no value\" or its age; the output: why the broker cannot be"
              + " reached",
          "connects again by itself, with the newest command and no older one");
    }
  }

  private static FaultRow keptCommand(Path folder) throws Exception {
    Time.Stepped time = new Time.Stepped(START);
    try (KeptCommand kept = KeptCommand.of(folder, "heater/command", "ON")) {
      String heater =
          BoardFile.HEATER_ON_NETWORK.replace("port = 1\n", "port = " + kept.port() + "\n");
      Settings settings = BoardFile.in(folder, AIR_ON_NETWORK, heater).settings();
      try (Daemon daemon = daemon(settings, new FakeMachine(folder, time), time)) {
        Awaitility.await().until(() -> stepped(daemon, time).contains("never retain commands"));
        kept.delete();
        Awaitility.await().until(() -> !stepped(daemon, time).contains("never retain commands"));
      }
    }
    return new FaultRow(
        "a command \"on\" that the broker keeps, and repeats to the relay at each connection",
        "commands \"off\" at every tick and never \"on\" while it is kept",
        "at the first tick with a broker; the relay's own timer, at most 60 s, is the bound",
        "the output: \"the broker keeps a command on ... that would be replayed; delete it, and"
            + " never retain commands\"",
        "switches as ever");
  }

  /** Does a tick; returns what ails the heater. */
  private static String stepped(Daemon daemon, Time.Stepped time) throws InterruptedException {
    step(daemon, time, 1);
    return daemon.latest().rooms().get(0).failures().getOrDefault(OutputKind.HEATER, "");
  }

  private static FaultRow killed(Path folder) throws Exception {
    Time.Stepped time = new Time.Stepped(START);
    Settings settings = BoardFile.in(folder, BoardFile.AIR, BoardFile.heater(17)).settings();
    FakeMachine machine = new FakeMachine(folder.resolve("sys"), time);
    machine.airSays(6_500, 63_000);
    Daemon killed = daemon(settings, machine, time);
    step(killed, time, 30);
    assertThat(machine.switched()).endsWith("17 on");
    // Nothing of it is closed: so a killed process leaves its lines.
    int before = machine.switched().size();
    RealBoard.switchOff(machine, new OffList.Part(settings.outputs().get(0), null));
    assertThat(machine.switched().subList(before, before + 1)).containsExactly("17 off");
    before = machine.switched().size();
    try (Daemon next = daemon(settings, machine, time)) {
      assertThat(next.latest()).isNull();
      assertThat(machine.switched().subList(before, before + 1)).containsExactly("17 off");
    }
    killed.close();
    return new FaultRow(
        "process killed (`kill -9`) with the heater on",
        "the line keeps its level, heater on, until the service's stop command and then its restart"
            + " switch every output off before anything else; the heartbeat relay opens by itself",
        "the stop command is one start of a process; on a board that was not measured; heartbeat"
            + " relay 30 s",
        "the service's log",
        "runs on; after 5 deaths in 10 min it stays off");
  }

  private static boolean isHeated(Daemon daemon) {
    return daemon.latest().rooms().get(0).rulings().get(OutputKind.HEATER).on();
  }

  private static void step(Daemon daemon, Time.Stepped time, int ticks)
      throws InterruptedException {
    for (int i = 0; i < ticks; i++) {
      time.advance(Duration.ofSeconds(10));
      daemon.step();
    }
  }

  private static Daemon daemon(Settings settings, FakeMachine machine, Time time)
      throws IOException {
    Settings tried = settings.commissioned(output -> true);
    return new Daemon(tried, new RealBoard(tried, () -> machine).open(), time, false);
  }

  private static final String AIR_ON_NETWORK =
      """
      [probes.air]
      room = "store"
      driver = "mqtt"
      topic = "store/air"
      accuracy = { temperature = 0.3 }
      """;

  /** A shed whose probes do not come back from a reading while they hang. */
  private record HangingBoard(Board shed, CountDownLatch hangs, boolean[] isHanging)
      implements Board {
    @Override
    public Probe probe(String name) throws IOException {
      Probe probe = shed.probe(name);
      return new Probe() {
        @Override
        public String name() {
          return name;
        }

        @Override
        public Reading read() throws IOException {
          if (isHanging[0]) {
            try {
              hangs.await();
            } catch (InterruptedException e) {
              Thread.currentThread().interrupt();
              throw new IOException("told to stop", e);
            }
          }
          return probe.read();
        }
      };
    }

    @Override
    public Relay relay(String name) throws IOException {
      return shed.relay(name);
    }

    @Override
    public void close() {
      shed.close();
    }
  }
}
