package rindward.controller.command.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import rindward.controller.alarm.AlarmState;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.daemon.SimulatedRun;
import rindward.controller.journal.AlarmAnswer;
import rindward.controller.journal.AlarmAnswered;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.OutdoorAir;
import rindward.hardware.shed.Weather;

/**
 * The invented farm of the demo, ten weeks after its first harvest: what was brought in and carried
 * where. Whenever it is looked at, its weather is that of early winter.
 */
public final class DemoFarm {
  /** How far back its history goes. */
  static final Duration HISTORY = Duration.ofDays(70);

  private static final LocalDate PRETENDED = LocalDate.of(2025, 12, 1);
  private static final String CURING = "curing";
  private static final String STORAGE = "storage";

  /** How long the rooms take to become what their history says of them. */
  private static final Duration SETTLING = Duration.ofDays(2);

  /** By then the clock is believed again that went back to where the rooms settle. */
  private static final Duration BELIEVED = Duration.ofMinutes(2);

  /** Something that was done, so many days after the first harvest, in the afternoon. */
  public record Deed(int day, Entry entry, double massKg) {}

  private final Instant start;

  /**
   * @param end the moment up to which its history goes
   */
  public DemoFarm(Instant end) {
    start = end.truncatedTo(ChronoUnit.SECONDS).minus(HISTORY);
  }

  /** Returns when its history ends. */
  Instant end() {
    return start.plus(HISTORY);
  }

  /** Returns when a rehearsal must begin that goes on from a kept history. */
  Instant settlesFrom() {
    return end().minus(SETTLING);
  }

  /** Puts the fruit where it lies at the end, and lets the rooms become what they are there. */
  void settle(SimulatedRun rehearsal) throws InterruptedException {
    Map<String, Double> masses = new LinkedHashMap<>();
    Map<String, String> places = new LinkedHashMap<>();
    for (Deed deed : deeds()) {
      if (deed.entry() instanceof Harvested harvested) {
        masses.put(harvested.lot(), deed.massKg());
        places.put(harvested.lot(), harvested.place());
      } else if (deed.entry() instanceof Moved moved) {
        places.put(moved.lot(), moved.place());
      }
    }
    places.forEach((lot, room) -> rehearsal.load(room, lot, masses.getOrDefault(lot, 1.0)));
    rehearsal.settle(SETTLING.plus(BELIEVED));
    see(rehearsal);
    rehearsal.settle(BELIEVED);
  }

  /** Returns when its history begins. */
  public Instant start() {
    return start;
  }

  /** Returns weather that is in early winter at the moment the demo is looked at. */
  Weather weather(int seed) {
    Weather year = GeneratedWeather.temperate(seed);
    long shift =
        PRETENDED.atStartOfDay(ZoneOffset.UTC).toEpochSecond()
            - start.plus(HISTORY).truncatedTo(ChronoUnit.DAYS).getEpochSecond();
    return new Weather() {
      @Override
      public OutdoorAir at(long epochSeconds) {
        return year.at(epochSeconds + shift);
      }
    };
  }

  /**
   * Lives through the history.
   *
   * @param dayPassed told after each day
   */
  void live(SimulatedRun rehearsal, Runnable dayPassed) throws InterruptedException {
    List<DemoNotes.Note> notes = new DemoNotes(start).all();
    List<Deed> deeds = deeds();
    for (int day = 0; day <= HISTORY.toDays(); day++) {
      if (day > 0) {
        rehearsal.advance(Duration.ofDays(1));
        see(rehearsal);
        dayPassed.run();
      }
      for (Deed deed : deeds) {
        if (deed.day() == day) {
          carry(rehearsal, deed);
        }
      }
      for (int i = 0; i < notes.size(); i++) {
        if (notes.get(i).day() == day) {
          say(rehearsal, notes.get(i).entry(), "demo-note-" + i);
        }
      }
    }
  }

  /** Somebody looks once a day, and says so of what came and went. */
  private static void see(SimulatedRun rehearsal) {
    ShedSnapshot latest = rehearsal.daemon().latest();
    if (latest == null) {
      return;
    }
    Instant now = rehearsal.now();
    latest
        .judgement()
        .alarms()
        .all()
        .forEach(
            (id, alarm) -> {
              if (alarm.state() == AlarmState.RETURNED_UNACKNOWLEDGED) {
                say(
                    rehearsal,
                    new AlarmAnswered(id.key(), AlarmAnswer.ACKNOWLEDGED, null, now),
                    "demo-seen-" + id.key() + "-" + now.getEpochSecond());
              }
            });
  }

  private static void carry(SimulatedRun rehearsal, Deed deed) {
    say(rehearsal, deed.entry(), "demo-" + deed.entry().subject() + "-" + deed.day());
    if (deed.entry() instanceof Harvested harvested) {
      rehearsal.load(harvested.place(), harvested.lot(), deed.massKg());
    } else if (deed.entry() instanceof Moved moved) {
      rehearsal.move(moved.lot(), CURING, moved.place());
    }
    rehearsal.heed();
  }

  private static void say(SimulatedRun rehearsal, Entry entry, String request) {
    rehearsal
        .daemon()
        .door()
        .say(entry, "Wren", request, OptionalLong.empty(), rehearsal.now())
        .refusal()
        .ifPresent(
            refusal -> {
              throw new IllegalStateException(refusal);
            });
  }

  public List<Deed> deeds() {
    List<Deed> deeds = new ArrayList<>();
    deeds.add(in(0, "K1", "kabocha", "Winterglut", 46, CURING, 92));
    deeds.add(in(0, "B1", "butternut", "Long Meg", 60, CURING, 110));
    deeds.add(in(0, "H1", "hubbard", "Slate Barn", 9, CURING, 58));
    deeds.add(in(2, "A1", "acorn", "Green Pleat", 38, STORAGE, 27));
    deeds.add(in(2, "D1", "delicata", "Striped Otter", 42, STORAGE, 21));
    deeds.add(move(13, "K1"));
    deeds.add(move(13, "B1"));
    deeds.add(move(13, "H1"));
    deeds.add(in(16, "P1", "pie-pumpkin", "Lantern Lane", 30, CURING, 66));
    deeds.add(in(16, "C1", "buttercup", "Old Thimble", 24, CURING, 40));
    deeds.add(move(29, "P1"));
    deeds.add(move(29, "C1"));
    deeds.add(in(64, "B2", "butternut", "Late Meg", 22, CURING, 34));
    deeds.add(in(64, "K2", "kabocha", "Frostgate", 18, CURING, 30));
    return deeds;
  }

  private Deed in(
      int day, String code, String crop, String variety, int count, String room, double massKg) {
    Instant at = start.plus(Duration.ofDays(day));
    return new Deed(day, new Harvested(code, crop, variety, count, room, at), massKg);
  }

  private Deed move(int day, String code) {
    return new Deed(day, new Moved(code, STORAGE, start.plus(Duration.ofDays(day))), 0);
  }
}
