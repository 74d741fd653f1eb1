package rindward.controller.command;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.lot.Lots;
import rindward.controller.store.Database;
import rindward.controller.variety.Grown;
import rindward.controller.variety.VarietyName;
import rindward.controller.variety.VarietyVerdict;

/** Every variety that was grown, and the verdict on each. */
final class Varieties {
  private final Farm farm;
  private final List<Grown> lots;

  Varieties(Farm farm, Database database) {
    this.farm = farm;
    Verdicts verdicts = new Verdicts(farm, database);
    this.lots =
        farm.lots().all().stream()
            .filter(lot -> !lot.variety().isEmpty())
            .map(verdicts::grown)
            .flatMap(Optional::stream)
            .toList();
  }

  /**
   * Returns the varieties of that name and type, in the order in which they first came in.
   *
   * @param variety in whatever letters it was typed; all if null
   * @param crop any name of a type; every type if null
   */
  List<VarietyName> named(@Nullable String variety, @Nullable String crop) {
    return lots.stream()
        .map(Grown::name)
        .distinct()
        .filter(name -> variety == null || same(name.variety(), variety))
        .filter(name -> crop == null || name.crop().equals(farm.cropKey(crop)))
        .toList();
  }

  VarietyVerdict verdict(VarietyName name) {
    return VarietyVerdict.of(
        name,
        lots,
        farm.lots().plans().values(),
        List.copyOf(farm.sessions().all()),
        decisions(),
        farm.now());
  }

  private List<VarietyDecided> decisions() {
    return Lots.standing(farm.journal()).stream()
        .map(Recorded::entry)
        .filter(VarietyDecided.class::isInstance)
        .map(VarietyDecided.class::cast)
        .toList();
  }

  private static boolean same(String one, String other) {
    return one.toLowerCase(Locale.ROOT).equals(other.toLowerCase(Locale.ROOT));
  }
}
