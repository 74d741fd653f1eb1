package rindward.dashboard.lots;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rindward.dashboard.rooms.ClimateView;

/** What the lots and lot pages ask of the controller. Called from any web thread. */
public interface LotsDesk {

  /**
   * Returns lots, those first that are to be eaten first.
   *
   * @param all whether lots without a sound fruit are shown too
   * @param from how many are left out at the beginning
   * @param size how many are shown at most
   */
  LotsView lots(boolean all, int from, int size);

  /** Returns the lot with that code, in whatever letters; empty if there is none. */
  Optional<LotView> lot(String code);

  /**
   * Returns the air around a lot, place after place, with the range that it needs now; empty if
   * there is no such lot.
   *
   * @param slots into how many slots of equal length the stretch is divided
   */
  Optional<ClimateView> air(String code, Instant from, Instant to, int slots);

  /**
   * Says one thing of one or several lots: of all, or of none.
   *
   * @param kind as a file of lots names it
   * @param codes of the lots
   * @param fields what is said, by the columns of a file of lots
   */
  SaidView say(String kind, List<String> codes, Map<String, String> fields, LotChange change)
      throws LotRefused;

  /**
   * Says an earlier entry right; the old one is kept beside it.
   *
   * @param fields only what was wrong, by the columns of a file of lots
   */
  SaidView correct(long entry, Map<String, String> fields, LotChange change) throws LotRefused;

  /** Takes back what should not have been said: all of it, or nothing. */
  SaidView withdraw(List<Long> entries, LotChange change) throws LotRefused;

  /** Returns the present moment by the controller's clock. */
  Instant now();
}
