package rindward.controller.exchange;

import java.util.Locale;
import rindward.controller.keeping.Survival;
import rindward.controller.keeping.SurvivalStep;

/** The share of fruits still sound, day by day, as a small drawing inside a page. */
final class SurvivalChart {
  private static final double LEFT = 34;
  private static final double WIDTH = 300;
  private static final double TOP = 6;
  private static final double HEIGHT = 70;

  private SurvivalChart() {}

  /** Returns the drawing; empty where there are too few fruits for a share. */
  static String svg(Survival survival) {
    int last = survival.lastDay();
    if (!survival.isEnoughForShare() || last == 0) {
      return "";
    }
    StringBuilder path = new StringBuilder("M").append(point(0, 1, last));
    double share = 1;
    for (SurvivalStep step : survival.steps()) {
      path.append(" L").append(point(step.day(), share, last));
      share = step.survival();
      path.append(" L").append(point(step.day(), share, last));
    }
    path.append(" L").append(point(last, share, last));
    return "<svg viewBox=\"0 0 350 98\" role=\"img\" aria-label=\"Share still sound by day\">"
        + "<path class=\"axis\" d=\"M"
        + point(0, 1, last)
        + " L"
        + point(0, 0, last)
        + " L"
        + point(last, 0, last)
        + "\"/><path class=\"curve\" d=\""
        + path
        + "\"/><text x=\"0\" y=\"12\">100 %</text><text x=\"16\" y=\"80\">0</text>"
        + "<text x=\"34\" y=\"93\">harvest</text><text x=\"334\" y=\"93\" text-anchor=\"end\">day "
        + last
        + "</text></svg>\n";
  }

  private static String point(int day, double share, int last) {
    return String.format(
        Locale.ROOT, "%.1f %.1f", LEFT + WIDTH * day / last, TOP + HEIGHT * (1 - share));
  }
}
