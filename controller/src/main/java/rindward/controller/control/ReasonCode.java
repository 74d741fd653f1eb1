package rindward.controller.control;

import java.util.Locale;

/**
 * Every reason there is for an output to be on or off, each with its sentence. {@code %1$s} and
 * {@code %2$s} are the two values of the {@link Reason}.
 */
public enum ReasonCode {
  NO_WISH("Nothing asks for it."),
  NO_READING("No probe in this room can be trusted, so nothing is switched on."),
  HEATS_BLIND(
      "No probe here can be trusted and it is %1$s C outside: heating half as much as of late, for"
          + " another %2$s h at most."),
  HEATS_BLIND_LATER(
      "No probe here can be trusted and it is %1$s C outside: heating half as much as of late, in"
          + " pulses; now it pauses."),
  RESTS("Nothing is kept in this room, so it rests."),
  ASKED_TO_REST("This room was asked to rest, so nothing is switched on."),
  UNREAD_COMMAND(
      "A newer version of this program gave an order that this one cannot read: the room is only"
          + " observed."),
  OBSERVE_ONLY("This room is only observed until it has been commissioned."),
  ON_BY_HAND("Switched on by hand for another %1$s min."),
  OFF_BY_HAND("Switched off by hand for another %1$s min."),
  NEAR_FREEZING("It is %1$s C: below %2$s C warmth goes before everything else."),
  TOO_WARM_TO_HEAT(
      "Heating stays off: the warmest probe says %1$s C and the upper limit is %2$s C."),
  PROBES_DISPUTE_HEAT(
      "Heating stays off: the probes disagree, %1$s C and %2$s C, and the warmer one is above the"
          + " limit."),
  WAITS_FOR_FAN("Heating waits for the fan that carries its heat away from it."),
  STOCK_WOULD_CHILL("It is %1$s C where it is coldest; below %2$s C what lies here is harmed."),
  HEAT_WITHOUT_EFFECT(
      "Heating pauses: in %1$s min the air did not get warmer. Look at heater and probe."),
  COLDER_THAN_WANTED("Heating: it is %1$s C and should not fall below %2$s C."),
  HOLDS_THE_MIDDLE(
      "Heating: it is %1$s C and should not fall below %2$s C, the middle of a range narrower than"
          + " this room can hold."),
  WARMS_TO_DRY("Heating to make damp air drier: it is %1$s C, %2$s C would do."),
  STILL_WARMING("Heating on until %2$s C; it is %1$s C."),
  WARM_ENOUGH("Warm enough: it is %1$s C, heating starts at %2$s C."),
  DRIER_THAN_WANTED("Humidifying: the air is at %1$s %% and should not fall below %2$s %%."),
  STILL_DRY("Humidifying until %2$s %%; the air is at %1$s %%."),
  DAMP_ENOUGH("Damp enough: the air is at %1$s %%, humidifying starts at %2$s %%."),
  FRUIT_WOULD_GET_WET(
      "No humidifying: the dew point, %1$s C, is too near the coldest fruit, %2$s C."),
  KEEPS_FRUIT_DRY(
      "Airing to keep the fruit dry: the dew point, %1$s C, is too near the coldest fruit, %2$s"
          + " C."),
  OUTDOOR_WOULD_WET_FRUIT(
      "Not aired: the outdoor dew point, %1$s C, is too near the coldest fruit, %2$s C."),
  OUTDOOR_HOLDS_MORE("Not aired: outside air holds more water than inside."),
  DRIES_BY_AIRING(
      "Airing: it is too damp (%1$s %%, limit %2$s %%) and outside air holds less water."),
  STILL_AIRING("Airing on until %2$s %%; the air is at %1$s %%."),
  DRIES("Drying the air: it is at %1$s %%, the limit is %2$s %%."),
  STILL_DRYING("Drying until %2$s %%; the air is at %1$s %%."),
  DRY_ENOUGH("Dry enough: the air is at %1$s %%, the limit is %2$s %%."),
  COOLS_WITH_OUTDOOR_AIR("Airing to cool: it is %1$s C inside, %2$s C would do."),
  COOLS_FOR_THE_DAY(
      "Airing while it is cool outside: it is %1$s C, down to %2$s C for a warm day."),
  NO_NEED_TO_AIR("No need to air: it is %1$s C, airing to cool starts at %2$s C."),
  AIRING_WOULD_COOL_TOO_FAR(
      "Not aired now: it would take the air down to %1$s C, and %2$s C is the least."),
  FRESH_AIR("Airing for the day's fresh air."),
  COOLS("Cooling: it is %1$s C, the limit is %2$s C."),
  COOL_ENOUGH("Cool enough: it is %1$s C, cooling starts at %2$s C."),
  CANNOT_COOL("Warmer than wanted, %1$s C, and nothing here can cool it: it is %2$s C outside."),
  CANNOT_WARM("Colder than wanted, %1$s C instead of %2$s C, and this room has no heater."),
  CANNOT_MOISTEN("Drier than wanted, %1$s %% instead of %2$s %%, and this room has no humidifier."),
  CANNOT_DRY("Damper than wanted, %1$s %% instead of %2$s %%, and outside air would not dry it."),
  ON_PLAINLY("On: the value is on that side of its set point."),
  OFF_PLAINLY("Off: the value is on the other side of its set point."),
  SHARES_OUT("Moves the air while it is heated or humidified."),
  MOVES_UNBIDDEN_HEAT(
      "Moves the air: the heater is switched off, yet it went on warming; it is %1$s C and the"
          + " upper limit is %2$s C."),
  MOVES_BLIND(
      "Moves the air: the heater was switched off, yet it went on warming until no probe could be"
          + " trusted."),
  AIRS_UNBIDDEN_HEAT(
      "Airing: the heater is switched off, yet it went on warming; it is %1$s C and the upper limit"
          + " is %2$s C."),
  CARRIES_AWAY("Carries the last warmth away from the heater."),
  STIRS("Stirs the air for a few minutes every hour."),
  NOTHING_TO_SHARE("Still, since nothing heats or humidifies."),
  ON_FOR_NOW("Stays on for another %1$s s to spare its contacts."),
  OFF_FOR_NOW("Stays off for another %1$s s to spare its contacts.");

  private final String sentence;

  ReasonCode(String sentence) {
    this.sentence = sentence;
  }

  /** Returns the sentence with its values, both in thousandths. */
  String sentence(int first, int second) {
    return String.format(Locale.ROOT, sentence, shown(first), shown(second));
  }

  private static String shown(int thousandths) {
    int tenths = (Math.abs(thousandths) + 50) / 100;
    String text = tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    return thousandths < 0 && tenths > 0 ? "-" + text : text;
  }
}
