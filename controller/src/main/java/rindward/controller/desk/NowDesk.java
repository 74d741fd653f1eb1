package rindward.controller.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.crop.Range;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
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
  private final ControlView control;

  /**
   * @param altitudeM height of the site, metres
   * @param control tells of the rooms
   */
  public NowDesk(String siteName, double altitudeM, LotPages lotPages, ControlView control) {
    this.siteName = siteName;
    this.pressurePa = StandardAtmosphere.pressurePa(altitudeM);
    this.lotPages = lotPages;
    this.control = control;
  }

  @Override
  public NowView now() {
    ControlReport report = control.latest();
    Instant at = report == null ? Instant.EPOCH : report.snapshot().at();
    List<RoomView> rooms =
        report == null ? List.of() : report.snapshot().rooms().stream().map(this::room).toList();
    try {
      return new NowView(
          siteName,
          lotPages.zone(),
          at,
          health(report),
          rooms,
          lotPages.told().lots().all().size(),
          toEat());
    } catch (StoreException e) {
      return new NowView(
          siteName, lotPages.zone(), at, String.valueOf(e.getMessage()), rooms, 0, List.of());
    }
  }

  private String health(@Nullable ControlReport report) {
    String silence = control.silence();
    if (silence != null) {
      return silence;
    }
    return report == null ? "Waiting for the first reading." : RoomWords.health(report.snapshot());
  }

  private RoomView room(RoomState state) {
    Room room = state.room();
    Picture picture = state.picture();
    Range range = state.demand().range();
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
