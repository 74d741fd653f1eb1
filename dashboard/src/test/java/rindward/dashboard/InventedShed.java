package rindward.dashboard;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import rindward.dashboard.rooms.NowView;
import rindward.dashboard.rooms.NowView.EatView;
import rindward.dashboard.rooms.NowView.LotView;
import rindward.dashboard.rooms.NowView.OutputView;
import rindward.dashboard.rooms.NowView.RoomView;
import rindward.dashboard.rooms.RoomsDesk;

/** A hand-written desk with an invented shed, for tests and for looking at the pages. */
final class InventedShed implements RoomsDesk {

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
        this, climate, lots, tastings, varieties, parts, alarms, InventedShed::square, people);
  }

  @Override
  public NowView now() {
    if (failure != null) {
      throw failure;
    }
    return view.get();
  }

  @Override
  public NowView live() {
    NowView all = now();
    return new NowView(
        all.siteName(), all.at(), all.health(), all.rooms(), all.lotCount(), null, all.toEat());
  }

  private static String square(String says) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><path d=\"M1 1h7v7h-7z\"/>"
        + "</svg>";
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
        at,
        "Both rooms are right, and every probe answers.",
        List.of(curing(curingTemperatureC), keeping(12.4, 61, null)),
        lots().size(),
        lots(),
        toEat());
  }

  /** The same shed with the keeping room too damp and a probe that is silent. */
  static NowView damp(Instant at) {
    return new NowView(
        "Hollin Bank Farm",
        at,
        "The keeping room is too damp, and one of its probes is silent.",
        List.of(
            curing(27.4),
            keeping(
                11.8,
                76,
                "The probe by the door has not answered for 14 min. Check its cable; the room is"
                    + " run on the other one.")),
        lots().size(),
        lots(),
        toEat());
  }

  /** A shed in its first minute: nothing is known of one room yet, and the other is at rest. */
  static NowView unread(Instant at) {
    return new NowView(
        "Hollin Bank Farm",
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
        List.of(),
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

  private static List<LotView> lots() {
    return List.of(
        new LotView(
            "HB-26-07",
            "butternut",
            "Hollin Amber",
            "curing room, shelf 2",
            42,
            "curing",
            6,
            0.62,
            118.4,
            14.1,
            11.5,
            96.2,
            127.0,
            "About four more days at this warmth."),
        new LotView(
            "HB-26-09",
            "kabocha",
            "Slate Lantern",
            "curing room, shelf 1",
            18,
            "curing",
            3,
            0.31,
            64.2,
            7.3,
            0.5,
            55.0,
            68.1,
            "Curing steadily; turn the crates once."),
        new LotView(
            "HB-26-02",
            "sweet potato",
            "Cinder Row",
            "keeping room, rack A",
            130,
            "keeping",
            48,
            1.0,
            890,
            61,
            12,
            731,
            944,
            "Cured on 14 October, and sweetening since."),
        new LotView(
            "HB-26-04",
            "onion",
            "Beck Yellow",
            "keeping room, nets",
            210,
            "keeping",
            61,
            null,
            402,
            688,
            9.2,
            310,
            517,
            "Warmer here than it likes: eat these before the others."));
  }
}
