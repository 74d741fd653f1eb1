package rindward.controller.broadcast;

import java.time.Instant;
import java.util.List;
import rindward.controller.lot.Lot;
import rindward.controller.readiness.EatingOrder.Offer;

/** Every lot of which anything is left, as it is published. */
record LotsMessage(Instant at, List<LotMessage> lots) {

  /** More would make one message too long for a small broker. */
  private static final int MOST = 200;

  /** One lot with its verdict. */
  record LotMessage(
      String code, String crop, String variety, String place, int sound, String verdict) {}

  static LotsMessage of(List<Offer> lots, Instant at) {
    return new LotsMessage(at, lots.stream().limit(MOST).map(LotsMessage::lot).toList());
  }

  private static LotMessage lot(Offer offer) {
    Lot lot = offer.lot();
    return new LotMessage(
        lot.code(),
        lot.crop(),
        lot.variety(),
        lot.place(),
        lot.fruits().sound(),
        offer.verdict().state().toString());
  }
}
