package rindward.controller.control;

import java.util.Locale;
import rindward.hardware.Thousandths;

/**
 * Every reason there is for an output to be on or off, each with its sentence. {@code %1$s} and
 * {@code %2$s} are the two values of the {@link Reason}.
 */
public enum Because {
  NO_WISH("Nothing asks for it."),
  NO_READING("No probe in this room can be trusted, so nothing is switched on."),
  OBSERVE_ONLY("This room is only observed until it has been commissioned."),
  COLDER_THAN_WANTED("Heating: it is %1$s C and should stay above %2$s C."),
  STILL_WARMING("Heating on until %2$s C; it is %1$s C."),
  WARM_ENOUGH("Warm enough: it is %1$s C, heating starts at %2$s C."),
  DRIER_THAN_WANTED("Humidifying: the air is at %1$s %% and should not fall below %2$s %%."),
  STILL_DRY("Humidifying until %2$s %%; the air is at %1$s %%."),
  DAMP_ENOUGH("Damp enough: the air is at %1$s %%, humidifying starts at %2$s %%."),
  TOO_COLD_TO_HUMIDIFY("Waits until the room is at %2$s C; it is %1$s C."),
  SHARES_OUT("Moves the air while it is heated or humidified."),
  NOTHING_TO_SHARE("Still, since nothing heats or humidifies."),
  ON_FOR_NOW("Stays on for another %1$s s to spare its contacts."),
  OFF_FOR_NOW("Stays off for another %1$s s to spare its contacts.");

  private final String sentence;

  Because(String sentence) {
    this.sentence = sentence;
  }

  /** Returns the sentence with its values, both in thousandths. */
  String sentence(int first, int second) {
    return String.format(Locale.ROOT, sentence, shown(first), shown(second));
  }

  private static String shown(int thousandths) {
    String text = String.format(Locale.ROOT, "%.1f", Thousandths.toDouble(thousandths));
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
