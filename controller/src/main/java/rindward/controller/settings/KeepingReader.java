package rindward.controller.settings;

import static rindward.controller.settings.CropKinds.DAY;
import static rindward.controller.settings.CropKinds.DAYS;
import static rindward.controller.settings.CropKinds.PERCENT;
import static rindward.controller.settings.CropKinds.PERCENTS;
import static rindward.controller.settings.CropKinds.TEMPERATURE;
import static rindward.controller.settings.CropKinds.TEMPERATURES;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Aging;
import rindward.controller.crop.Chilling;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Keeping;
import rindward.controller.crop.Q10Aging;
import rindward.controller.crop.TableAging;

/** Reads the {@code keep} table of a type; whatever it does not name is that of the base. */
final class KeepingReader {
  private final CitedReader in;
  private final TableReader table;
  private final Optional<Keeping> base;
  private final int before;

  private KeepingReader(CitedReader in, Optional<Keeping> base) {
    this.in = in;
    this.table = in.table();
    this.base = base;
    this.before = table.problems().count();
  }

  /** Returns how the crop keeps; empty where something in the table was wrong. */
  static Optional<Keeping> read(CitedReader in, Optional<Keeping> base) {
    return new KeepingReader(in, base).read();
  }

  private Optional<Keeping> read() {
    Cited<Integer> reference = in.required("reference", TEMPERATURE, base.map(Keeping::reference));
    Optional<Aging> aging = aging(reference);
    Optional<Chilling> chilling = base.flatMap(Keeping::chilling);
    if (table.has("chilling")) {
      chilling =
          in.below("chilling").flatMap(cold -> chilling(cold, base.flatMap(Keeping::chilling)));
    }
    Keeping keeping =
        new Keeping(
            in.required("temperature", TEMPERATURES, base.map(Keeping::temperature)),
            in.required("humidity", PERCENTS, base.map(Keeping::humidity)),
            in.required("life", DAYS, base.map(Keeping::life)),
            reference,
            aging.orElse(temperature -> Aging.REFERENCE),
            chilling,
            in.required("freezing", TEMPERATURE, base.map(Keeping::freezing)),
            in.required("upper", TEMPERATURE, base.map(Keeping::upper)),
            in.required("rot-above", PERCENT, base.map(Keeping::rotAbove)),
            in.required("shrink", PERCENTS, base.map(Keeping::shrink)));
    table.rejectUnknown();
    if (sound()) {
      checkAgainstEachOther(keeping);
    }
    return sound() ? Optional.of(keeping) : Optional.empty();
  }

  private Optional<Aging> aging(Cited<Integer> reference) {
    if (table.has("q10") && table.has("aging")) {
      table.problem(
          "aging", table.path("aging") + " stood beside q10 but it must be one or the other");
      return Optional.empty();
    }
    if (table.has("aging")) {
      return table();
    }
    Optional<Cited<Integer>> q10 =
        in.optional(
            "q10",
            CropKinds.Q10,
            base.map(Keeping::aging)
                .filter(Q10Aging.class::isInstance)
                .map(aging -> ((Q10Aging) aging).q10()));
    if (q10.isPresent()) {
      return Optional.of(new Q10Aging(q10.get(), reference));
    }
    if (base.isEmpty() && !table.has("q10")) {
      table.missing("q10", "it must be a number from 1 to 5, or else aging must be a list");
    }
    return base.map(Keeping::aging);
  }

  private Optional<Aging> table() {
    List<Cited<TableAging.Point>> points = new ArrayList<>();
    int last = Integer.MIN_VALUE;
    for (CitedReader point : in.list("aging")) {
      int at = point.table().required("at", TEMPERATURE);
      int rate = point.table().required("rate", CropKinds.RATE);
      points.add(point.cite(new TableAging.Point(at, rate)));
      if (at <= last) {
        point.table().refuse("at", "it must be warmer than the point before it");
      }
      last = at;
    }
    if (points.isEmpty() && sound()) {
      table.refuse("aging", "it must have at least one point");
    }
    return sound() ? Optional.of(new TableAging(points)) : Optional.empty();
  }

  private static Optional<Chilling> chilling(CitedReader in, Optional<Chilling> base) {
    TableReader table = in.table();
    Cited<Integer> threshold = in.required("threshold", TEMPERATURE, base.map(Chilling::threshold));
    List<Cited<Chilling.Dose>> doses = base.map(Chilling::doses).orElse(List.of());
    if (table.has("doses")) {
      doses = in.list("doses").stream().map(KeepingReader::dose).toList();
    }
    table.rejectUnknown();
    return Optional.of(new Chilling(threshold, doses));
  }

  private static Cited<Chilling.Dose> dose(CitedReader in) {
    TableReader table = in.table();
    return in.cite(
        new Chilling.Dose(
            table.required("at", TEMPERATURE),
            table.required("days", DAY),
            table.required("harm", Kind.choice(Chilling.Harm.class)),
            table.required("say", Kind.TEXT)));
  }

  private void checkAgainstEachOther(Keeping keeping) {
    int freezing = keeping.freezing().value();
    int low = keeping.temperature().value().low();
    int high = keeping.temperature().value().high();
    int damp = keeping.humidity().value().high();
    if (low < freezing) {
      tell(low, "not begin below freezing", freezing, "temperature");
    }
    if (keeping.upper().value() < high) {
      tell(keeping.upper().value(), "not lie below the end of the storage range", high, "upper");
    }
    if (keeping.rotAbove().value() < damp) {
      tell(
          keeping.rotAbove().value(),
          "not lie below the storage humidity's end",
          damp,
          "rot-above");
    }
    if (keeping.chilling().isPresent()) {
      int threshold = keeping.chilling().get().threshold().value();
      if (threshold < freezing) {
        tell(threshold, "not lie below freezing", freezing, "chilling", "threshold");
      }
      if (low < threshold) {
        tell(low, "not begin below the chilling threshold", threshold, "temperature");
      }
    }
  }

  private void tell(int was, String must, int other, String... way) {
    table.conflict(Kind.plain(was), "it must " + must + ", " + Kind.plain(other), way);
  }

  private boolean sound() {
    return table.problems().count() == before;
  }
}
