package rindward.dashboard.tastings;

import java.time.Instant;
import java.util.Optional;
import rindward.dashboard.request.Page;

/**
 * What the tastings pages ask of the controller. Called from any web thread. Nothing that {@link
 * #tastings}, {@link #tasting} or {@link #sheet} return tells what is in a cup before its tasting
 * is closed.
 */
public interface TastingsDesk {

  /** Returns a page of the tastings, the newest first. */
  TastingsView tastings(Page page);

  /** Returns the tasting of that name; empty if there is none. */
  Optional<TastingView> tasting(String name);

  /** Returns what the cook of a tasting goes by, and each taster's link; empty if there is none. */
  Optional<KitchenView> kitchen(String name);

  /** Returns what lies before the taster whose link has this secret; empty if it is nobody's. */
  Optional<SheetView> sheet(String secret);

  /**
   * Plans a tasting.
   *
   * @param request the same for the same plan sent again
   */
  TastingView plan(PlanRequest plan, String by, String request) throws TastingRefused;

  /**
   * Notes that a fruit was cut and cooked for a sample; it leaves its lot by that.
   *
   * @param request the same for the same note sent again
   */
  KitchenView cooked(String name, CookedRequest cooked, String by, String request)
      throws TastingRefused;

  /**
   * Takes back that a fruit was cooked for a sample: it lies in its lot again. Nothing happens
   * where that is not noted.
   *
   * @param request the same for the same wish sent again
   */
  KitchenView uncooked(String name, String sample, String fruit, String by, String request)
      throws TastingRefused;

  /** Ends a tasting: nothing more is scored, and the codes are opened. */
  TastingView close(String name, EndRequest end, String by, String request) throws TastingRefused;

  /**
   * Notes what a taster said of one cup; said again, the later answer counts.
   *
   * @param at when it was tasted
   */
  SheetView score(String secret, CupRequest said, String request, Instant at) throws TastingRefused;

  /** Returns the present moment by the controller's clock. */
  Instant now();
}
