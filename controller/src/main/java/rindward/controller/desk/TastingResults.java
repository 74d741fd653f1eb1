package rindward.controller.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Served;
import rindward.controller.keeping.Interval;
import rindward.controller.keeping.PValue;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Session;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.analysis.ClosedSession;
import rindward.controller.tasting.analysis.FlightResult;
import rindward.controller.tasting.analysis.PanelTest;
import rindward.controller.tasting.analysis.RankGroups;
import rindward.controller.tasting.analysis.SampleMean;
import rindward.dashboard.tastings.ResultView;
import rindward.dashboard.tastings.ResultView.GoView;
import rindward.dashboard.tastings.ResultView.MeanView;
import rindward.dashboard.tastings.ResultView.QuestionView;
import rindward.dashboard.tastings.ResultView.SampleView;

/**
 * What a closed tasting says, as the page shows it: the samples with their names, each question.
 */
final class TastingResults {
  private final CropGuide crops;
  private final Lots lots;

  TastingResults(CropGuide crops, Lots lots) {
    this.crops = crops;
    this.lots = lots;
  }

  ResultView view(Session session, ClosedSession result) {
    Set<Attribute> asked =
        session.scored().stream().map(Scored::attribute).collect(Collectors.toSet());
    List<String> bitter = result.stopped();
    return new ResultView(
        session.planned().samples().stream()
            .map(served -> sample(session, served, bitter.contains(served.name())))
            .toList(),
        Arrays.stream(Attribute.values())
            .filter(asked::contains)
            .map(attribute -> question(attribute, result))
            .toList(),
        result.acrossFlights(result.main()));
  }

  /** Returns what people call the type of a lot. */
  String cropName(String code) {
    return lots.find(code)
        .map(lot -> crops.crop(lot.crop()).map(Crop::name).orElse(lot.crop()))
        .orElse("");
  }

  String variety(String code) {
    return lots.find(code).map(Lot::variety).orElse("");
  }

  private SampleView sample(Session session, Served served, boolean bitter) {
    return new SampleView(
        served.name(),
        served.lot(),
        cropName(served.lot()),
        variety(served.lot()),
        session.fruitsOf(served.name()).size(),
        bitter,
        session.goodFor(served.name()).entrySet().stream()
            .map(use -> use.getKey().words() + " " + use.getValue())
            .toList());
  }

  private static QuestionView question(Attribute attribute, ClosedSession result) {
    List<FlightResult> goes = result.results(attribute);
    List<String> words = attribute.words();
    return new QuestionView(
        attribute.key(),
        attribute.question(),
        goes.get(0).standing().name().toLowerCase(Locale.ROOT),
        attribute.scale().lowest(),
        attribute.scale().highest(),
        words.get(0),
        words.get(words.size() - 1),
        goes.stream().map(TastingResults::go).toList());
  }

  private static GoView go(FlightResult result) {
    List<SampleMean> means = result.means();
    List<Double> sums = result.test().map(PanelTest::rankSums).orElse(List.of());
    return new GoView(
        result.table().panelists().size(),
        means.stream()
            .map(mean -> mean(mean, sums.isEmpty() ? null : sums.get(means.indexOf(mean))))
            .toList(),
        result.corrected().map(PValue::value).orElse(null),
        result.test().flatMap(PanelTest::agreement).orElse(null),
        result.groups().map(RankGroups::groups).orElse(List.of()),
        result.words(),
        result.proofs());
  }

  private static MeanView mean(SampleMean mean, @Nullable Double rankSum) {
    return new MeanView(
        mean.sample(),
        mean.mean(),
        mean.interval().map(Interval::low).orElse(null),
        mean.interval().map(Interval::high).orElse(null),
        rankSum);
  }
}
