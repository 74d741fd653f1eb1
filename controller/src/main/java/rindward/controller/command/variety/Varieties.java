package rindward.controller.command.variety;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rindward.controller.command.base.Farm;
import rindward.controller.judge.JudgedLots;
import rindward.controller.store.Database;
import rindward.controller.variety.VarietyName;
import rindward.controller.variety.VarietyVerdict;

/** Every variety that was grown, as a command names it, and the verdict on each. */
final class Varieties {
  private final Farm farm;
  private final JudgedLots judged;

  Varieties(Farm farm, Database database) {
    this.farm = farm;
    this.judged = farm.judged(database);
  }

  /**
   * Returns the varieties of that name and type, in the order in which they first came in.
   *
   * @param variety in whatever letters it was typed; all if null
   * @param crop any name of a type; every type if null
   */
  List<VarietyName> named(@Nullable String variety, @Nullable String crop) {
    return judged.varieties().stream()
        .filter(name -> variety == null || same(name.variety(), variety))
        .filter(name -> crop == null || name.crop().equals(farm.cropKey(crop)))
        .toList();
  }

  VarietyVerdict verdict(VarietyName name) {
    return judged.variety(name, farm.now());
  }

  private static boolean same(String one, String other) {
    return one.toLowerCase(Locale.ROOT).equals(other.toLowerCase(Locale.ROOT));
  }
}
