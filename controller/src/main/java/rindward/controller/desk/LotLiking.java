package rindward.controller.desk;

import java.util.ArrayList;
import java.util.List;
import rindward.controller.tasting.analysis.AgeCurve;
import rindward.controller.tasting.analysis.AgedTaste.Occasion;
import rindward.controller.tasting.analysis.EatingWindow;
import rindward.controller.variety.Liking;
import rindward.dashboard.lots.LikingView;
import rindward.dashboard.lots.LikingView.AgedView;
import rindward.dashboard.lots.LikingView.PointView;

/** How a variety was liked at each age, as points that can be drawn. */
final class LotLiking {
  private static final int MOST_POINTS = 60;

  private LotLiking() {}

  static LikingView view(Liking liking) {
    return new LikingView(
        liking.tastes().stream()
            .map(
                each ->
                    new AgedView(
                        each.lot(),
                        each.taste().day(),
                        each.taste().liking(),
                        each.taste().occasion() == Occasion.SESSION))
            .toList(),
        liking.hasAges() ? points(liking) : List.of(),
        liking.hasAges() ? liking.curve().window().map(EatingWindow::sentence).orElse(null) : null);
  }

  private static List<PointView> points(Liking liking) {
    AgeCurve curve = liking.curve();
    int first = liking.tastes().get(0).taste().day();
    int last = liking.tastes().get(liking.tastes().size() - 1).taste().day();
    int step = Math.max(1, (last - first) / MOST_POINTS);
    List<PointView> points = new ArrayList<>();
    for (int day = first; day <= last; day += step) {
      int at = day;
      curve
          .at(day)
          .ifPresent(mean -> points.add(new PointView(at, Math.round(mean * 100) / 100.0)));
    }
    return points;
  }
}
