package rindward.controller.keeping;

import java.util.List;

/**
 * One lot as it kept: the unit of chance in every comparison. Fruits of one lot share field,
 * weather, harvest and crate, and fail together; only another lot is another witness.
 *
 * @param beside season and room; lots are only compared with lots beside them
 * @param fates what became of its fruits
 */
public record KeptLot(String beside, List<Fate> fates) {
  public KeptLot {
    fates = List.copyOf(fates);
  }

  int fruits() {
    return fates.stream().mapToInt(Fate::fruits).sum();
  }
}
