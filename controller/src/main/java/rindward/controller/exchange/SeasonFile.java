package rindward.controller.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.keeping.Ending;
import rindward.controller.keeping.HalfLife;
import rindward.controller.keeping.Survival;
import rindward.controller.keeping.WeightLoss;
import rindward.controller.variety.VarietyVerdict;
import rindward.controller.variety.Yield.Season;

/** What is known of the varieties as a table: a line for each; an empty field was not known. */
public final class SeasonFile {
  private static final CSVFormat CSV = CSVFormat.DEFAULT.builder().setRecordSeparator("").get();

  private static final String COLUMNS =
      "crop,variety,ripens,ripe_fruits,fruits_known,seasons,eats,liking,fruits_tasted,sessions,fruits_kept,fruits_lost,half_life_days,weight_loss_pct_30_days,fruits_borne,grams_borne,plants,still_kept,decision,reason\n";

  private SeasonFile() {}

  /** Returns the whole file. */
  public static String csv(List<VarietyVerdict> verdicts) {
    StringBuilder text = new StringBuilder(COLUMNS);
    verdicts.forEach(verdict -> text.append(row(verdict)).append('\n'));
    return text.toString();
  }

  private static String row(VarietyVerdict verdict) {
    Survival survival = verdict.keeping().survival();
    HalfLife half = survival.halfLife();
    List<Season> seasons = verdict.yield().seasons();
    Double liking = verdict.eating().liking();
    return CSV.format(
        Cell.written(verdict.name().crop()),
        Cell.written(verdict.name().variety()),
        verdict.ripening().answer(),
        verdict.ripening().ripe(),
        verdict.ripening().fruits(),
        verdict.ripening().seasons(),
        verdict.eating().words(),
        number(liking),
        verdict.eating().fruits(),
        verdict.eating().sessions(),
        survival.fruits(),
        survival.count(Ending.LOST),
        half.state() == HalfLife.State.REACHED ? String.valueOf(half.day()) : "",
        number(verdict.keeping().weightLoss().map(WeightLoss::monthlyPct).orElse(null)),
        seasons.stream().mapToInt(Season::fruits).sum(),
        grams(seasons),
        seasons.stream().mapToInt(Season::plants).sum(),
        verdict.stillKeeping(),
        verdict.decided().map(d -> d.decision().toString()).orElse(""),
        Cell.written(verdict.decided().map(VarietyDecided::reason).orElse("")));
  }

  private static String grams(List<Season> seasons) {
    return seasons.stream()
        .map(season -> Optional.ofNullable(season.grams()))
        .reduce((a, b) -> a.flatMap(x -> b.map(y -> x + y)))
        .flatMap(sum -> sum)
        .map(String::valueOf)
        .orElse("");
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : String.format(Locale.ROOT, "%.2f", value);
  }
}
