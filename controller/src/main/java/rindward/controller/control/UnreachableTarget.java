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
  public static @Nullable Reason of(ControlInput input) {
    if (!input.knowsAir() || input.demand().range() == null) {
      return null;
    }
    Limits warmth = input.range().temperature();
    int slow = input.slowMilliC();
    if (slow < warmth.low() && !input.room().has(OutputKind.HEATER)) {
      return new Reason(ReasonCode.CANNOT_WARM, slow, warmth.low());
    }
    if (slow > warmth.high() && !canCool(input, slow)) {
      return new Reason(ReasonCode.CANNOT_COOL, slow, input.outdoorMilliC());
    }
    if (!input.knowsVapour()) {
      return null;
    }
    Limits water = input.range().humidity();
    int middle = input.middleHumidity(input.air().vapourPa());
    if (middle > water.high() && !canDry(input)) {
      return new Reason(ReasonCode.CANNOT_DRY, middle, water.high());
    }
    return middle < water.low() && !input.room().has(OutputKind.HUMIDIFIER)
        ? new Reason(ReasonCode.CANNOT_MOISTEN, middle, water.low())
        : null;
  }

  private static boolean canCool(ControlInput input, int slow) {
    return input.room().has(OutputKind.COOLER)
        || !input.outdoor().isKnown()
        || (input.room().has(OutputKind.EXHAUST) && input.outdoorMilliC() < slow);
  }

  private static boolean canDry(ControlInput input) {
    return input.room().has(OutputKind.DEHUMIDIFIER)
        || !input.outdoor().hasHumidity()
        || (input.room().has(OutputKind.EXHAUST)
            && input.outdoor().vapourPa() < input.air().vapourPa());
  }
}
