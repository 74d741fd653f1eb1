package rindward.dashboard.tastings;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.request.JsonBody;

/**
 * A tasting as it is planned. Of two samples of one lot each names its own fruits.
 *
 * @param check code of the sample that every go shares; needed where one go does not hold all
 * @param twice the sample that is served twice, unknown to the tasters
 * @param warmUp what is tasted first, openly and unscored
 * @param cups most cups in one go; 6 if null
 * @param main key of the question that is compared first; liking if null
 * @param blinding how much the tasters may know: full, partial or open; full if null
 * @param method such as baked
 * @param temperatureC of oven or pan
 * @param cut size and shape of the pieces
 * @param doneWhen how it is seen that a sample is done
 * @param servedAtC temperature at the table
 * @param part of the fruit it is cut from
 */
public record PlanRequest(
    String name,
    List<SampleRequest> samples,
    List<String> tasters,
    @Nullable String check,
    @Nullable String twice,
    @Nullable String warmUp,
    @Nullable Integer cups,
    @Nullable String main,
    @Nullable String blinding,
    @Nullable String method,
    @Nullable Double temperatureC,
    @Nullable String cut,
    @Nullable String doneWhen,
    @Nullable Double servedAtC,
    @Nullable String part) {
  private static final int MOST = 40;
  private static final int LONGEST_NAME = 60;
  private static final int LONGEST = 200;
  private static final int COLDEST_C = -50;
  private static final int HOTTEST_C = 1_000;

  /** One sample: a lot, and the names of the fruits that are cut; fruit 1 if null. */
  public record SampleRequest(String lot, @Nullable List<String> fruits) {
    public SampleRequest {
      JsonBody.needed(lot, "lot", MOST);
      if (fruits != null) {
        check(fruits, "fruits");
        fruits = List.copyOf(fruits);
      }
    }
  }

  /**
   * @throws IllegalArgumentException naming the field that cannot be
   */
  public PlanRequest {
    JsonBody.needed(name, "name", LONGEST_NAME);
    if (name.contains("/")) {
      throw new IllegalArgumentException("name was '" + name + "' but it must be without a '/'.");
    }
    if (samples == null || samples.isEmpty() || samples.size() > MOST) {
      throw new IllegalArgumentException(
          "samples was missing or too long but it must name 2 to " + MOST + " lots.");
    }
    check(tasters, "tasters");
    for (String text :
        new String[] {check, twice, warmUp, main, blinding, method, cut, doneWhen, part}) {
      if (text != null) {
        JsonBody.needed(text, "a text of the plan", LONGEST);
      }
    }
    check(temperatureC, "temperatureC");
    check(servedAtC, "servedAtC");
    samples = List.copyOf(samples);
    tasters = List.copyOf(tasters);
  }

  private static void check(@Nullable Double degreesC, String field) {
    if (degreesC != null && !(degreesC >= COLDEST_C && degreesC <= HOTTEST_C)) {
      throw new IllegalArgumentException(
          field + " was '" + degreesC + "' but it must be " + COLDEST_C + " to " + HOTTEST_C + ".");
    }
  }

  private static void check(List<String> names, String field) {
    if (names == null || names.isEmpty() || names.size() > MOST) {
      throw new IllegalArgumentException(
          field + " was missing or too long but it must have 1 to " + MOST + " names.");
    }
    names.forEach(each -> JsonBody.needed(each, field, LONGEST_NAME));
  }
}
