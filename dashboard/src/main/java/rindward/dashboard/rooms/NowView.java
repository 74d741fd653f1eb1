package rindward.dashboard.rooms;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rooms page in one response, and each message of its live stream: what is shown, already
 * decided and already put into words by the controller. Temperatures are degrees C, humidities
 * percent; the page turns them into the reader's units.
 *
 * @param siteName the farm's own name for itself
 * @param zone the farm's, as its IANA name: every time that is shown is by its clock
 * @param at the moment this picture was taken, by the controller's clock
 * @param health one sentence: is the shed well, and if not, what is wrong first
 * @param rooms in the order of the settings
 * @param lotCount how many lots there are
 * @param toEat what may be eaten now, the first first; only the first few
 */
public record NowView(
    String siteName,
    String zone,
    Instant at,
    String health,
    List<RoomView> rooms,
    int lotCount,
    List<EatView> toEat) {

  public NowView {
    rooms = List.copyOf(rooms);
    toEat = List.copyOf(toEat);
  }

  /**
   * One room. A value that was not measured is null, never zero; a room at rest has no targets.
   *
   * @param purpose what the room is for at present, as a word ("curing", "keeping", "at rest")
   * @param inRange both values inside their targets; false while either is unknown
   * @param oldestReadingSeconds age of the oldest reading the picture rests on; null when no probe
   *     has answered yet
   * @param observeOnly true while the room is only watched and nothing is switched
   * @param problem one sentence on what is wrong and what to do; null when all is well
   */
  public record RoomView(
      String name,
      String purpose,
      @Nullable Double temperatureC,
      @Nullable Double relativeHumidity,
      @Nullable Double dewPointC,
      @Nullable Double targetLowC,
      @Nullable Double targetHighC,
      @Nullable Double targetLowRh,
      @Nullable Double targetHighRh,
      boolean inRange,
      @Nullable Long oldestReadingSeconds,
      boolean observeOnly,
      List<OutputView> outputs,
      @Nullable String problem) {

    public RoomView {
      outputs = List.copyOf(outputs);
    }
  }

  /**
   * One switched output.
   *
   * @param kind the settings' word for what it does ("heater", "exhaust" ...)
   * @param on what it was last told to do
   * @param reason why, in a sentence a grower understands
   */
  public record OutputView(String name, String kind, boolean on, String reason) {}

  /**
   * One lot to eat.
   *
   * @param free sound fruits that nobody has set aside
   * @param state a word that stays the same ("eat-first", "ready" ...)
   * @param words the same as a person reads it
   * @param reason why, in one sentence
   */
  public record EatView(
      String code,
      String cropName,
      String variety,
      String place,
      int free,
      String state,
      String words,
      String reason) {}
}
