package rindward.controller.diagnosis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import rindward.controller.alarm.Activation;
import rindward.controller.alarm.AlarmChange;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmPerformance;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Priority;
import rindward.controller.daemon.SimulatedRun;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.PlannedLot;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.AlarmLog;
import rindward.controller.store.Database;
import rindward.controller.store.EventLog;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.Weather;

/** A season of the daemon itself on the simulated shed, and what it called about. */
final class SeasonOfAlarms implements AutoCloseable {
  static final AlarmTable TABLE = AlarmTableReader.builtIn();
  private static final int YEAR = 2026;
  private static final int CURES_DAYS = 12;
  private static final int PAGE = 100_000;

  private final Settings settings;
  private final Instant start;
  private final SimulatedRun rehearsal;
  private final Map<LocalDate, List<Deed>> deeds = new TreeMap<>();

  private record Deed(PlannedLot lot, boolean isMove) {}

  /** What was called about. */
  record Call(AlarmId id, Instant at, Instant over) {
    boolean wakes() {
      return TABLE.row(id.kind()).priority() == Priority.WAKE;
    }
  }

  SeasonOfAlarms(Path example, Weather weather, LocalDate begins) throws IOException {
    Path folder = Files.createTempDirectory("rindward-alarms");
    Path file = folder.resolve("shed.toml");
    Files.copy(example, file);
    settings = SettingsReader.read(file, new Problems()).orElseThrow();
    start = begins.atStartOfDay(ZoneId.of("UTC")).toInstant();
    rehearsal = new SimulatedRun(settings, weather, start);
    for (PlannedLot lot : settings.season()) {
      LocalDate arrives = lot.arrives().atYear(YEAR);
      deed(arrives.isBefore(begins) ? begins : arrives, new Deed(lot, false));
      if (lot.then() != null) {
        LocalDate moves = arrives.plusDays(CURES_DAYS);
        deed(moves.isBefore(begins) ? begins : moves, new Deed(lot, true));
      }
    }
  }

  /** Lives through days, lots coming and going as the settings plan them. */
  void live(int days) throws InterruptedException {
    for (int day = 0; day < days; day++) {
      LocalDate date = rehearsal.now().atZone(ZoneId.of("UTC")).toLocalDate();
      for (Deed deed : deeds.getOrDefault(date, List.of())) {
        carry(deed);
      }
      rehearsal.heed();
      rehearsal.advance(Duration.ofDays(1));
    }
  }

  void live(Duration stretch) throws InterruptedException {
    rehearsal.advance(stretch);
  }

  Instant now() {
    return rehearsal.now();
  }

  void breaks(ShedFault fault) {
    rehearsal.shed().inject(fault);
  }

  void mend() {
    rehearsal.shed().clearFaults();
  }

  /** Returns everything that was called about since, news left out. */
  List<Call> calls(Instant since) {
    rehearsal.daemon().flush();
    List<Call> calls = new ArrayList<>();
    Map<AlarmId, Instant> open = new HashMap<>();
    try (Database database = new Database(settings.store())) {
      List<AlarmLog.Noted> newestFirst =
          new AlarmLog(new EventLog(database)).page(Long.MAX_VALUE, Long.MAX_VALUE, PAGE);
      for (int i = newestFirst.size() - 1; i >= 0; i--) {
        AlarmLog.Noted noted = newestFirst.get(i);
        AlarmChange change = noted.turn().change();
        Instant at = Instant.ofEpochMilli(noted.atMillis());
        if (at.isBefore(since) || TABLE.row(change.id().kind()).priority() == Priority.NEWS) {
          continue;
        }
        if (change.isCall()) {
          open.put(change.id(), at);
        } else if (change.isOver() && open.containsKey(change.id())) {
          calls.add(new Call(change.id(), open.remove(change.id()), at));
        }
      }
    }
    open.forEach((id, at) -> calls.add(new Call(id, at, Instant.MAX)));
    return calls;
  }

  /** Returns how well they behaved. */
  AlarmPerformance marks(List<Call> calls, Instant from) {
    return AlarmPerformance.of(
        calls.stream()
            .map(
                call ->
                    new Activation(
                        call.id(),
                        call.at().getEpochSecond(),
                        call.over().equals(Instant.MAX)
                            ? Activation.STILL_ON
                            : call.over().getEpochSecond()))
            .toList(),
        from.getEpochSecond(),
        now().getEpochSecond());
  }

  @Override
  public void close() {
    rehearsal.daemon().close();
  }

  private void deed(LocalDate date, Deed deed) {
    deeds.computeIfAbsent(date, d -> new ArrayList<>()).add(deed);
  }

  private void carry(Deed deed) {
    PlannedLot lot = deed.lot();
    if (deed.isMove()) {
      say(new Moved(lot.code(), lot.then(), now()), "moved-" + lot.code());
      rehearsal.move(lot.code(), lot.room(), lot.then());
    } else {
      int count = Math.max(1, lot.massGrams() / 1000);
      say(
          new Harvested(lot.code(), lot.crop(), "", count, lot.room(), now().minusSeconds(1)),
          "harvested-" + lot.code());
      rehearsal.load(lot.room(), lot.code(), lot.massGrams() / 1000.0);
    }
  }

  private void say(Entry entry, String request) {
    rehearsal
        .daemon()
        .door()
        .say(entry, "Wren", request, OptionalLong.empty(), now())
        .refusal()
        .ifPresent(
            refusal -> {
              throw new IllegalStateException(refusal);
            });
  }
}
