package rindward.controller.alarm;

import java.util.HashSet;
import java.util.Set;
import rindward.controller.crop.Range;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * All that the alarms need to know of one room in one tick. Temperatures are thousandths of a
 * degree C, humidity thousandths of a percent; {@link Thousandths#NONE} for what is not known or
 * does not apply, which leaves the alarms that need it as they were.
 *
 * @param room its name
 * @param outputs what it can switch; decides which advice fits
 * @param wanted the air it should have, not the moving target of a ramp
 * @param coldestMilliC the lowest good air temperature
 * @param warmestMilliC the highest good air temperature
 * @param humidityMilliPct the working humidity
 * @param dewPointMilliC dew point of the room's air
 * @param fruitMilliC the coldest fruit, probed or modelled; none in an empty room
 * @param chillingMilliC the highest chilling threshold among the lots; none where no lot chills
 * @param freezingMilliC the highest freezing point among the lots; none in an empty room
 * @param highLimitMilliC above it the stock or the shed is in danger
 * @param minutesToChilling how soon the forecast sees the fruit at its threshold, to stay; {@link
 *     #NOT_FORECAST} while it has nothing to say
 * @param isColdOutside whether the room could lose its stock by morning if nothing held it; also
 *     true when the outdoor air is unknown in the cold half of the year
 * @param findings what is simply so in this room
 * @param accepted kinds that the grower has accepted here as the best that can be had: silent
 */
public record RoomFacts(
    String room,
    Set<OutputKind> outputs,
    Range wanted,
    int coldestMilliC,
    int warmestMilliC,
    int humidityMilliPct,
    int dewPointMilliC,
    int fruitMilliC,
    int chillingMilliC,
    int freezingMilliC,
    int highLimitMilliC,
    int minutesToChilling,
    boolean isColdOutside,
    Set<Finding> findings,
    Set<AlarmKind> accepted) {

  /** Stands for a forecast that is silent. */
  public static final int NOT_FORECAST = -1;

  /** Colder than this is near freezing, whatever is kept. */
  private static final int FROST_MILLI_C = 2_000;

  public RoomFacts {
    outputs = Set.copyOf(outputs);
    findings = Set.copyOf(findings);
    accepted = Set.copyOf(accepted);
  }

  /** Returns the same facts with more that was found. */
  public RoomFacts finding(Set<Finding> more) {
    if (more.isEmpty()) {
      return this;
    }
    Set<Finding> all = new HashSet<>(findings);
    all.addAll(more);
    return withFindings(all);
  }

  /** Returns the same facts without what was found of some kinds. */
  public RoomFacts without(Set<AlarmKind> kinds) {
    Set<Finding> rest = new HashSet<>(findings);
    rest.removeIf(found -> kinds.contains(found.kind()));
    return withFindings(rest);
  }

  private RoomFacts withFindings(Set<Finding> others) {
    return new RoomFacts(
        room,
        outputs,
        wanted,
        coldestMilliC,
        warmestMilliC,
        humidityMilliPct,
        dewPointMilliC,
        fruitMilliC,
        chillingMilliC,
        freezingMilliC,
        highLimitMilliC,
        minutesToChilling,
        isColdOutside,
        others,
        accepted);
  }

  /**
   * Returns below which temperature the stock is near freezing: 2 C, or where the room is meant to
   * be about as cold as that, halfway from its lower edge to the freezing point (judgement).
   */
  int frostMilliC() {
    return freezingMilliC == Thousandths.NONE
        ? FROST_MILLI_C
        : Math.min(FROST_MILLI_C, Math.floorDiv(wanted.temperature().low() + freezingMilliC, 2));
  }

  /** Returns the temperature of the fruit, or of the air where there is none or it is unknown. */
  int stockMilliC() {
    return fruitMilliC == Thousandths.NONE ? coldestMilliC : fruitMilliC;
  }
}
