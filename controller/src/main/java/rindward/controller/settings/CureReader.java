package rindward.controller.settings;

import static rindward.controller.settings.CropKinds.DAYS;
import static rindward.controller.settings.CropKinds.FACTOR;
import static rindward.controller.settings.CropKinds.PERCENT;
import static rindward.controller.settings.CropKinds.PERCENTS;
import static rindward.controller.settings.CropKinds.TEMPERATURE;
import static rindward.controller.settings.CropKinds.TEMPERATURES;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Cure;
import rindward.controller.crop.Days;
import rindward.controller.crop.HumidityEffect;
import rindward.controller.crop.HumidityRole;
import rindward.controller.crop.HumiditySide;
import rindward.controller.crop.Limits;
import rindward.controller.crop.RateCurve;
import rindward.controller.crop.RatePoint;

/** Reads the {@code cure} table of a type; whatever it does not name is that of the base. */
final class CureReader {
  private final CitedReader in;
  private final TableReader table;
  private final Optional<Cure> base;
  private final int before;

  private CureReader(CitedReader in, Optional<Cure> base) {
    this.in = in;
    this.table = in.table();
    this.base = base;
    this.before = table.problems().count();
  }

  /** Returns the cure; empty where something in the table was wrong. */
  static Optional<Cure> read(CitedReader in, Optional<Cure> base) {
    return new CureReader(in, base).read();
  }

  private Optional<Cure> read() {
    Cure.Need need = in.plain("need", Kind.choice(Cure.Need.class), base.map(Cure::need));
    Cited<Limits> temperature =
        in.required("temperature", TEMPERATURES, base.map(Cure::temperature));
    Cited<Limits> humidity = in.required("humidity", PERCENTS, base.map(Cure::humidity));
    Cited<Days> days = in.required("days", DAYS, base.map(Cure::days));
    List<Cited<RatePoint>> points = points();
    Optional<HumiditySide> dry = side("dry", base.flatMap(cure -> cure.humidityEffect().dry()));
    Optional<HumiditySide> damp = side("damp", base.flatMap(cure -> cure.humidityEffect().damp()));
    boolean movingAir = in.plain("moving-air", Kind.FLAG, base.map(Cure::movingAir));
    Cited<Integer> harmAbove = in.required("harm-above", TEMPERATURE, base.map(Cure::harmAbove));
    Optional<Cited<Limits>> weightLoss =
        in.optional("weight-loss", PERCENTS, base.flatMap(Cure::weightLoss));
    Cited<String> confirmation =
        in.required("confirmation", Kind.TEXT, base.map(Cure::confirmation));
    table.rejectUnknown();
    if (!sound()) {
      return Optional.empty();
    }
    RateCurve rate = new RateCurve(points);
    checkAgainstEachOther(temperature.value(), rate, dry, damp, harmAbove);
    return sound()
        ? Optional.of(
            new Cure(
                need,
                temperature,
                humidity,
                days,
                rate,
                new HumidityEffect(dry, damp),
                movingAir,
                harmAbove,
                weightLoss,
                confirmation))
        : Optional.empty();
  }

  private List<Cited<RatePoint>> points() {
    if (!table.has("rate")) {
      return base.map(cure -> cure.rate().points())
          .orElseGet(
              () -> {
                table.missing(
                    "rate", "it must be a list of { at = ..., days = ..., source = ... }");
                return List.of();
              });
    }
    List<Cited<RatePoint>> points = new ArrayList<>();
    int last = Integer.MIN_VALUE;
    for (CitedReader point : in.list("rate")) {
      int at = point.table().required("at", TEMPERATURE);
      int milliDays = point.table().required("days", CropKinds.CURE_DAYS);
      points.add(
          point.cite(
              milliDays == CropKinds.NEVER
                  ? RatePoint.nothing(at)
                  : RatePoint.wholeCureIn(at, milliDays)));
      if (at <= last) {
        point.table().refuse("at", "it must be warmer than the point before it");
      }
      last = at;
    }
    if (points.isEmpty() && sound()) {
      table.refuse("rate", "it must have at least one point");
    }
    return points;
  }

  private Optional<HumiditySide> side(String key, Optional<HumiditySide> base) {
    if (!table.has(key)) {
      return base;
    }
    return in.below(key).flatMap(side -> side(side, base));
  }

  private static Optional<HumiditySide> side(CitedReader in, Optional<HumiditySide> base) {
    int before = in.table().problems().count();
    HumidityRole role =
        in.plain("role", Kind.choice(HumidityRole.class), base.map(HumiditySide::role));
    Optional<HumiditySide> same = base.filter(side -> side.role() == role);
    Cited<Integer> limit = in.required("limit", PERCENT, base.map(HumiditySide::limit));
    Cited<Integer> until = limit;
    Cited<Integer> factor = new Cited<>(role == HumidityRole.COST ? 1000 : 0, limit.sources());
    if (role == HumidityRole.GATE) {
      until = in.required("until", PERCENT, same.map(HumiditySide::until));
      factor = in.required("factor", FACTOR, same.map(HumiditySide::factor));
      if (factor.value() == HumiditySide.WHOLE) {
        in.table().problem("factor", in.table().path("factor") + " was '1' but it must be below 1");
      }
    }
    String sentence = in.plain("say", Kind.TEXT, same.map(HumiditySide::sentence));
    in.table().rejectUnknown();
    return in.table().problems().count() == before
        ? Optional.of(new HumiditySide(role, limit, until, factor, sentence))
        : Optional.empty();
  }

  private void checkAgainstEachOther(
      Limits target,
      RateCurve rate,
      Optional<HumiditySide> dry,
      Optional<HumiditySide> damp,
      Cited<Integer> harmAbove) {
    dry.filter(side -> side.until().value() > side.limit().value())
        .ifPresent(
            side -> tell(side.until(), "not be above its limit, ", side.limit(), "dry", "until"));
    damp.filter(side -> side.until().value() < side.limit().value())
        .ifPresent(
            side -> tell(side.until(), "not be below its limit, ", side.limit(), "damp", "until"));
    if (dry.isPresent()
        && damp.isPresent()
        && dry.get().limit().value() > damp.get().limit().value()) {
      tell(dry.get().limit(), "not be above the damp limit, ", damp.get().limit(), "dry", "limit");
    }
    if (target.high() > harmAbove.value()) {
      table.conflict(
          show(target),
          "it must end at or below harm-above, " + Kind.plain(harmAbove.value()),
          "temperature");
    }
    if (rate.maximumWithin(harmAbove.value() + 1, Integer.MAX_VALUE) > 0) {
      table.conflict(
          Kind.plain(harmAbove.value()),
          "it must not lie below a point of the rate that is not \"never\"",
          "harm-above");
    }
    if (rate.maximumWithin(target.low(), target.high()) == 0) {
      table.conflict(show(target), "it must lie where the rate is not \"never\"", "temperature");
    }
  }

  private void tell(Cited<Integer> was, String must, Cited<Integer> other, String... way) {
    table.conflict(Kind.plain(was.value()), "it must " + must + Kind.plain(other.value()), way);
  }

  private static String show(Limits limits) {
    return "[" + Kind.plain(limits.low()) + ", " + Kind.plain(limits.high()) + "]";
  }

  private boolean sound() {
    return table.problems().count() == before;
  }
}
