package rindward.dashboard.shed;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The shed page in one response. Temperatures are degrees C, humidities percent; what was not
 * measured is null.
 *
 * @param at the moment this was true, by the controller's clock
 * @param longestManualMinutes how long a manual command may last at most
 */
public record ShedView(
    Instant at,
    List<ProbeView> probes,
    List<OutputView> outputs,
    List<HealthView> health,
    long longestManualMinutes) {

  public ShedView {
    probes = List.copyOf(probes);
    outputs = List.copyOf(outputs);
    health = List.copyOf(health);
  }

  /**
   * One probe.
   *
   * @param room the room it hangs in; null outdoors
   * @param place where it hangs there, as a word ("air", "corner", "pulp", "outdoor")
   * @param ageSeconds how old its value is; null when it has given none
   * @param problem what is wrong with it and what to do, in one sentence; null when all is well
   */
  public record ProbeView(
      String name,
      @Nullable String room,
      String place,
      @Nullable Double temperatureC,
      @Nullable Double relativeHumidity,
      @Nullable Long ageSeconds,
      @Nullable String problem) {}

  /**
   * One output.
   *
   * @param kind the settings' word for what it does ("heater", "exhaust" ...)
   * @param on what it was last told to do
   * @param reason why, in a sentence a grower understands
   * @param manual what a person has ordered; null while it runs by itself
   * @param problem why it cannot be switched; null when it can
   */
  public record OutputView(
      String room,
      String name,
      String kind,
      boolean on,
      String reason,
      @Nullable ManualView manual,
      @Nullable String problem) {}

  /** A manual command in force. It ends by itself at {@code until}. */
  public record ManualView(boolean on, Instant until, String by) {}

  /**
   * One thing about the program itself.
   *
   * @param what what it is about ("store", "last tick", "version")
   * @param sentence how it is
   * @param wrong whether a person should do something about it
   */
  public record HealthView(String what, String sentence, boolean wrong) {}
}
