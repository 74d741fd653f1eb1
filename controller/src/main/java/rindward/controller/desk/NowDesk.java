package rindward.controller.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.crop.Range;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.store.StoreException;
import rindward.dashboard.rooms.NowView;
import rindward.dashboard.rooms.NowView.EatView;
import rindward.dashboard.rooms.NowView.OutputView;
import rindward.dashboard.rooms.NowView.RoomView;
import rindward.dashboard.rooms.RoomsDesk;
import rindward.hardware.Thousandths;
import rindward.hardware.air.MoistAir;
import rindward.hardware.air.StandardAtmosphere;

/** The rooms page: every room as the last tick left it, and what to eat next. */
public final class NowDesk implements RoomsDesk {
  /** More would be a list, and the list has a page of its own. */
  private static final int MOST_TO_EAT = 6;

  private final String siteName;
  private final double pressurePa;
  private final LotPages lotPages;
  private final Supplier<@Nullable ShedSnapshot> latest;

  /**
   * @param altitudeM height of the site, metres
   * @param latest the last snapshot; null before the first tick
   */
  public NowDesk(
      String siteName,
      double altitudeM,
      LotPages lotPages,
      Supplier<@Nullable ShedSnapshot> latest) {
    this.siteName = siteName;
    this.pressurePa = StandardAtmosphere.pressurePa(altitudeM);
    this.lotPages = lotPages;
    this.latest = latest;
  }

  @Override
  public NowView now() {
    ShedSnapshot snapshot = latest.get();
    if (snapshot == null) {
      return new NowView(
          siteName, Instant.EPOCH, "Waiting for the first reading.", List.of(), 0, List.of());
    }
    List<RoomView> rooms = snapshot.rooms().stream().map(this::room).toList();
    try {
      return new NowView(
          siteName,
          snapshot.at(),
          RoomWords.health(snapshot),
          rooms,
          lotPages.told().lots().all().size(),
          toEat());
    } catch (StoreException e) {
      return new NowView(
          siteName, snapshot.at(), String.valueOf(e.getMessage()), rooms, 0, List.of());
    }
  }

  private RoomView room(RoomState state) {
    Room room = state.room();
    Picture picture = state.picture();
    Range range = state.order().range();
    List<OutputView> outputs = new ArrayList<>();
    for (Output output : room.outputs().values()) {
      OutputDecision ruling = state.rulings().get(output.kind());
      if (ruling != null) {
        outputs.add(
            new OutputView(
                output.name(), output.kind().word(), ruling.on(), ruling.reason().sentence()));
      }
    }
    return new RoomView(
        room.name(),
        range == null ? "at rest" : room.purpose().word(),
        known(picture.temperatureMilliC()),
        known(picture.humidityMilliPct()),
        dewPointC(picture),
        range == null ? null : Thousandths.toDouble(range.temperature().low()),
        range == null ? null : Thousandths.toDouble(range.temperature().high()),
        range == null ? null : Thousandths.toDouble(range.humidity().low()),
        range == null ? null : Thousandths.toDouble(range.humidity().high()),
        range != null && RoomWords.isInRange(state),
        picture.hasTemperature() ? picture.oldestSeconds() : null,
        room.observeOnly(),
        outputs,
        RoomWords.problem(state));
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

  private static @Nullable Double known(int thousandths) {
    return thousandths == Thousandths.NONE ? null : Thousandths.toDouble(thousandths);
  }
}
