package rindward.controller.control;

import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Limits;
import rindward.hardware.OutputKind;

/**
 * Says what is wrong with the air that no output of the room can put right. That is weather, or a
 * room that lacks something: worth one note a day, not an alarm, and no reason to switch anything.
 */
public final class UnreachableTarget {
  private UnreachableTarget() {}

  /** Returns the worst of it; null while nothing is beyond the room. */
  public static @Nullable Reason of(Situation situation) {
    if (!situation.knowsAir() || situation.order().range() == null) {
      return null;
    }
    Limits warmth = situation.range().temperature();
    int slow = situation.slowMilliC();
    if (slow < warmth.low() && !situation.room().has(OutputKind.HEATER)) {
      return new Reason(ReasonCode.CANNOT_WARM, slow, warmth.low());
    }
    if (slow > warmth.high() && !canCool(situation, slow)) {
      return new Reason(ReasonCode.CANNOT_COOL, slow, situation.outdoorMilliC());
    }
    if (!situation.knowsVapour()) {
      return null;
    }
    Limits water = situation.range().humidity();
    int middle = situation.middleHumidity(situation.air().vapourPa());
    if (middle > water.high() && !canDry(situation)) {
      return new Reason(ReasonCode.CANNOT_DRY, middle, water.high());
    }
    return middle < water.low() && !situation.room().has(OutputKind.HUMIDIFIER)
        ? new Reason(ReasonCode.CANNOT_MOISTEN, middle, water.low())
        : null;
  }

  private static boolean canCool(Situation situation, int slow) {
    return situation.room().has(OutputKind.COOLER)
        || !situation.outdoor().isKnown()
        || (situation.room().has(OutputKind.EXHAUST) && situation.outdoorMilliC() < slow);
  }

  private static boolean canDry(Situation situation) {
    return situation.room().has(OutputKind.DEHUMIDIFIER)
        || !situation.outdoor().hasHumidity()
        || (situation.room().has(OutputKind.EXHAUST)
            && situation.outdoor().vapourPa() < situation.air().vapourPa());
  }
}
