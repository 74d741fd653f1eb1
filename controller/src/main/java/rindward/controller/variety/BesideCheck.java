package rindward.controller.variety;

import java.util.List;
import java.util.Optional;
import rindward.controller.keeping.KeepingCompared;
import rindward.controller.keeping.KeptLot;

/** A variety beside the check of its own class: how both keep. */
final class BesideCheck {
  private final VarietyName name;
  private final VarietyName check;

  BesideCheck(VarietyName name, VarietyName check) {
    this.name = name;
    this.check = check;
  }

  /** Returns the sentence on how the two keep; empty where too little was seen. */
  Optional<String> keeping(List<KeptLot> own, List<KeptLot> its) {
    return KeepingCompared.between(own, its)
        .map(test -> test.sentence(name.variety(), check.variety() + " (the check)"));
  }
}
