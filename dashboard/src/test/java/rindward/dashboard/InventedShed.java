package rindward.dashboard;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import rindward.dashboard.rooms.NowView;
import rindward.dashboard.rooms.NowView.EatView;
import rindward.dashboard.rooms.NowView.OutputView;
import rindward.dashboard.rooms.NowView.RoomView;
import rindward.dashboard.rooms.RoomsDesk;

/** A hand-written desk with an invented shed, for tests and for looking at the pages. */
final class InventedShed implements RoomsDesk {

  private static final int LOTS = 4;

  private final AtomicReference<NowView> view;
  private final RememberedSignIn people = new RememberedSignIn();
  private final InventedParts parts;
  private final InventedClimate climate;
  private final InventedAlarms alarms;
  private final InventedLots lots;
  private final InventedTastings tastings;
  private final InventedVarieties varieties;
  private volatile RuntimeException failure;

  InventedShed(NowView view) {
    this.view = new AtomicReference<>(view);
    this.parts = new InventedParts(view.at());
    this.climate = new InventedClimate(view.at());
    this.alarms = new InventedAlarms(view.at());
    this.lots = new InventedLots(view.at(), climate);
    this.tastings = new InventedTastings(view.at());
    this.varieties = new InventedVarieties(view.at());
  }

  /** Returns this shed with people who are remembered until the test is over. */
  Desks desks() {
    return desks(people);
  }

  /** As above, with people remembered elsewhere. */
  Desks desks(RememberedSignIn people) {
    return new Desks(
        this,
        climate,
        lots,
        tastings,
        varieties,
        parts,
        new InventedRecord(view.get().at()),
        alarms,
        InventedShed::square,
        people);
  }

  @Override
  public NowView now() {
    if (failure != null) {
      throw failure;
    }
    return view.get();
  }

  private static String square(String says) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><path d=\"M1"
        + " 1h7v7h-7z\"/></svg>";
  }

  NowView show(NowView next) {
    view.set(next);
    return next;
  }

  /** Returns the outputs and probes, for a look at what was ordered. */
  InventedParts parts() {
    return parts;
  }

  /** Returns the alarms, for a look at what was answered, and to let them begin. */
  InventedAlarms alarms() {
    return alarms;
  }

  /** Returns the lots, for a look at what was said of them. */
  InventedLots lotDesk() {
    return lots;
  }

  /** Returns the tastings, for a look at what was planned and scored. */
  InventedTastings tastings() {
    return tastings;
  }

  /** Returns the varieties, for a look at what was decided. */
  InventedVarieties varieties() {
    return varieties;
  }

  /** Makes every further question fail. */
  void fail(RuntimeException with) {
    failure = with;
  }

  /** A curing room and a keeping room, both right, and four lots. */
  static NowView well(Instant at, double curingTemperatureC) {
    return new NowView(
        "Hollin Bank Farm",
        InventedLots.ZONE,
        at,
        "Both rooms are right, and every probe answers.",
        List.of(curing(curingTemperatureC), keeping(12.4, 61, null)),
        LOTS,
        toEat());
  }

  /** The same shed with the keeping room too damp and a probe that is silent. */
  static NowView damp(Instant at) {
    return new NowView(
        "Hollin Bank Farm",
        InventedLots.ZONE,
        at,
        "The keeping room is too damp, and one of its probes is silent.",
        List.of(
            curing(27.4),
            keeping(
                11.8,
                76,
                "The probe by the door has not answered for 14 min. Check its cable; the room is"
                    + " run on the other one.")),
        LOTS,
        toEat());
  }

  /** A shed in its first minute: nothing is known of one room yet, and the other is at rest. */
  static NowView unread(Instant at) {
    return new NowView(
        "Hollin Bank Farm",
        InventedLots.ZONE,
        at,
        "The curing room has not been measured yet.",
        List.of(
            new RoomView(
                "Curing room",
                "curing",
                null,
                null,
                null,
                26.0,
                29.0,
                75.0,
                85.0,
                false,
                null,
                true,
                List.of(),
                null),
            new RoomView(
                "Keeping room",
                "at rest",
                18.3,
                58.0,
                9.9,
                null,
                null,
                null,
                null,
                false,
                4L,
                false,
                List.of(),
                null)),
        0,
        List.of());
  }

  private static RoomView curing(double temperatureC) {
    return new RoomView(
        "Curing room",
        "curing",
        temperatureC,
        79.2,
        23.4,
        26.0,
        29.0,
        75.0,
        85.0,
        temperatureC >= 26 && temperatureC <= 29,
        6L,
        false,
        List.of(
            new OutputView("Heater", "heater", true, "0.3 degrees below the middle of its range"),
            new OutputView("Fan", "circulation", true, "runs whenever the heater does"),
            new OutputView("Exhaust", "exhaust", false, "the air outside is damper"),
            new OutputView("Humidifier", "humidifier", false, "humidity is in its range")),
        null);
  }

  private static RoomView keeping(double temperatureC, double humidity, String problem) {
    return new RoomView(
        "Keeping room",
        "keeping",
        temperatureC,
        humidity,
        5.1,
        10.0,
        15.0,
        50.0,
        70.0,
        humidity <= 70,
        9L,
        true,
        List.of(
            new OutputView("Heater", "heater", false, "warm enough until the night"),
            new OutputView("Exhaust", "exhaust", false, "would run now: the air outside is drier")),
        problem);
  }

  private static List<EatView> toEat() {
    return List.of(
        new EatView(
            "D1",
            "Delicata",
            "Striped Otter",
            "Keeping room",
            39,
            "eat-first",
            "eat first",
            "Its usual life is nearly over."),
        new EatView(
            "K4T",
            "Kabocha",
            "Winterglut",
            "Keeping room",
            43,
            "ready",
            "ready",
            "Its flavour has come up."));
  }
}
