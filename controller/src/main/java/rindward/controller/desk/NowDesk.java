package rindward.controller.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.control.Ruling;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Range;
import rindward.controller.crop.RateCurve;
import rindward.controller.ledger.Account;
import rindward.controller.ledger.LotAccount;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Recorded;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.snapshot.Snapshot;
import rindward.controller.snapshot.Snapshot.RoomState;
import rindward.controller.store.Door;
import rindward.controller.store.StoreException;
import rindward.dashboard.rooms.NowView;
import rindward.dashboard.rooms.NowView.EatView;
import rindward.dashboard.rooms.NowView.LotView;
import rindward.dashboard.rooms.NowView.OutputView;
import rindward.dashboard.rooms.NowView.RoomView;
import rindward.dashboard.rooms.RoomsDesk;
import rindward.hardware.Thousandths;
import rindward.hardware.air.MoistAir;
import rindward.hardware.air.StandardAtmosphere;

/** The rooms page: every room as the last tick left it, every lot with its account. */
public final class NowDesk implements RoomsDesk {
  /** More would be a list, and the list has a page of its own. */
  private static final int MOST_TO_EAT = 6;

  private static final double MILLIS_PER_HOUR = 3_600_000.0;

  private final String siteName;
  private final double pressurePa;
  private final CropGuide crops;
  private final Door door;
  private final LotAccounts accounts;
  private final LotPages lotPages;
  private final Supplier<@Nullable Snapshot> latest;

  /**
   * @param altitudeM height of the site, metres
   * @param latest the last snapshot; null before the first tick
   */
  public NowDesk(
      String siteName,
      double altitudeM,
      CropGuide crops,
      Door door,
      LotAccounts accounts,
      LotPages lotPages,
      Supplier<@Nullable Snapshot> latest) {
    this.siteName = siteName;
    this.pressurePa = StandardAtmosphere.pressurePa(altitudeM);
    this.crops = crops;
    this.door = door;
    this.accounts = accounts;
    this.lotPages = lotPages;
    this.latest = latest;
  }

  @Override
  public NowView now() {
    return view(true);
  }

  @Override
  public NowView live() {
    return view(false);
  }

  private NowView view(boolean withLots) {
    Snapshot snapshot = latest.get();
    if (snapshot == null) {
      return new NowView(
          siteName,
          Instant.EPOCH,
          "Waiting for the first reading.",
          List.of(),
          0,
          withLots ? List.of() : null,
          List.of());
    }
    List<RoomView> rooms = snapshot.rooms().stream().map(this::room).toList();
    try {
      return new NowView(
          siteName,
          snapshot.at(),
          Words.health(snapshot),
          rooms,
          lotPages.told().lots().all().size(),
          withLots ? lots(snapshot.at()) : null,
          toEat());
    } catch (StoreException e) {
      String why = String.valueOf(e.getMessage());
      return new NowView(
          siteName, snapshot.at(), why, rooms, 0, withLots ? List.of() : null, List.of());
    }
  }

  private RoomView room(RoomState state) {
    Room room = state.room();
    Picture picture = state.picture();
    Range range = state.range();
    List<OutputView> outputs = new ArrayList<>();
    for (Output output : room.outputs().values()) {
      Ruling ruling = state.rulings().get(output.kind());
      if (ruling != null) {
        outputs.add(
            new OutputView(
                output.name(), output.kind().word(), ruling.on(), ruling.reason().sentence()));
      }
    }
    return new RoomView(
        room.name(),
        room.purpose().word(),
        known(picture.temperatureMilliC()),
        known(picture.humidityMilliPct()),
        dewPointC(picture),
        Thousandths.toDouble(range.temperature().low()),
        Thousandths.toDouble(range.temperature().high()),
        Thousandths.toDouble(range.humidity().low()),
        Thousandths.toDouble(range.humidity().high()),
        Words.isInRange(state),
        picture.hasTemperature() ? picture.oldestSeconds() : null,
        room.observeOnly(),
        outputs,
        Words.problem(state));
  }

  private @Nullable Double dewPointC(Picture picture) {
    if (!picture.hasTemperature() || !picture.hasHumidity() || picture.humidityMilliPct() <= 0) {
      return null;
    }
    double exact =
        new MoistAir(
                Thousandths.toDouble(picture.temperatureMilliC()),
                Thousandths.toDouble(picture.humidityMilliPct()),
                pressurePa)
            .dewPointC();
    return known(Thousandths.ofHundredths(exact));
  }

  private List<LotView> lots(Instant now) {
    List<Recorded> journal = door.journal();
    List<LotView> views = new ArrayList<>();
    for (Lot lot : Lots.of(journal).all()) {
      if (lot.fruits().sound() == 0) {
        continue;
      }
      views.add(
          crops
              .crop(lot.crop())
              .map(crop -> lot(lot, crop, journal, now))
              .orElseGet(() -> lotOfUnknownType(lot, now)));
    }
    return views;
  }

  private LotView lot(Lot lot, Crop crop, List<Recorded> journal, Instant now) {
    LotAccount account = accounts.of(lot, crop, journal, now);
    Optional<Double> progress =
        crop.cure().map(c -> account.cureProgress().measured() / (double) RateCurve.WHOLE);
    boolean isCuring =
        crop.cure().isPresent() && account.curedAt() == null && lot.attested().isEmpty();
    Account shown = isCuring ? account.curing() : account.keeping();
    return new LotView(
        lot.code(),
        crop.name(),
        lot.variety(),
        lot.place(),
        lot.count(),
        isCuring ? "curing" : "keeping",
        Math.toIntExact(Duration.between(lot.harvestedAt(), now).toDays()),
        progress.map(p -> Math.min(1, p)).orElse(null),
        hours(shown.inRange().measured()),
        hours(shown.outOfRangeMillis()),
        hours(shown.unknownMillis()),
        hours(shown.inRange().certain()),
        hours(shown.inRange().possible()),
        Words.lot(lot, account, isCuring, now));
  }

  private List<EatView> toEat() {
    return lotPages.toEat().stream().limit(MOST_TO_EAT).map(NowDesk::eat).toList();
  }

  private static EatView eat(Offer offer) {
    return new EatView(
        offer.lot().code(),
        offer.crop().name(),
        offer.lot().variety(),
        offer.lot().place(),
        offer.lot().fruits().free(),
        LotLines.word(offer.verdict()),
        offer.verdict().state().toString(),
        offer.verdict().reasons().get(0));
  }

  /** A type may have left the settings; its lots are in the room all the same. */
  private static LotView lotOfUnknownType(Lot lot, Instant now) {
    return new LotView(
        lot.code(),
        lot.crop(),
        lot.variety(),
        lot.place(),
        lot.count(),
        "keeping",
        Math.toIntExact(Duration.between(lot.harvestedAt(), now).toDays()),
        null,
        0,
        0,
        0,
        0,
        0,
        Words.unknownType(lot));
  }

  private static double hours(long millis) {
    return Math.round(millis / MILLIS_PER_HOUR * 100) / 100.0;
  }

  private static @Nullable Double known(int thousandths) {
    return thousandths == Thousandths.NONE ? null : Thousandths.toDouble(thousandths);
  }
}
