package rindward.controller.readiness;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rindward.controller.crop.Chilling;
import rindward.controller.crop.Crop;
import rindward.controller.crop.Days;
import rindward.controller.crop.Maturity;
import rindward.controller.crop.Maturity.Ripening;
import rindward.controller.journal.FieldDay;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.Planted;

/**
 * What to bring in first before a cold night: what the night would hurt and what is worth the most,
 * before what can stand it and what will never be good. The order is common practice; the limits
 * are the guide's, and those of {@link FrostDamage}.
 */
public final class BringIn {
  private BringIn() {}

  /** What stands in the field. */
  public record InField(Planted plan, Crop crop, List<FieldDayNoted> days) {
    public InField {
      days = List.copyOf(days);
    }
  }

  /** What a night would do. */
  public enum Night {
    HARMLESS,
    /** Cold that adds up, as every such night does. */
    CHILLS,
    /** The vines die, and nothing ripens on them any more; fruit under leaves is unharmed. */
    KILLS_VINES,
    /** Bare fruit is hurt. */
    HURTS_FRUIT
  }

  /** How ripe the fruit is by what was written down. */
  public enum Worth {
    TOO_YOUNG,
    /** Nothing was written down, or it does not tell. */
    NOT_KNOWN,
    /** Old enough to ripen under a roof. */
    RIPENS_INSIDE,
    RIPE
  }

  /**
   * One plot.
   *
   * @param reasons each one sentence
   */
  public record Place(InField field, Night night, Worth worth, List<String> reasons) {
    public Place {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * Returns the plots, the first to be brought in first.
   *
   * @param lowMilliC expected lowest air temperature, thousandths of a degree C
   * @param today day on which the night begins
   */
  public static List<Place> order(List<InField> fields, int lowMilliC, LocalDate today) {
    return fields.stream()
        .map(field -> place(field, lowMilliC, today))
        .sorted(
            Comparator.comparing((Place place) -> place.worth() != Worth.TOO_YOUNG)
                .thenComparing(Place::night)
                .thenComparing(Place::worth)
                .reversed()
                .thenComparing(place -> place.field().plan().plot())
                .thenComparing(place -> place.field().plan().lot()))
        .toList();
  }

  private static Place place(InField field, int low, LocalDate today) {
    List<String> reasons = new ArrayList<>();
    Night night = night(field.crop(), low);
    Optional<Days> age = age(field, today);
    Worth worth = worth(field, age, today);
    reasons.add(ripeness(field, age, worth));
    reasons.add(cold(field.crop(), night, low));
    return new Place(field, night, worth, reasons);
  }

  private static Night night(Crop crop, int low) {
    if (low <= crop.keeping().freezing().value()) {
      return crop.maturity().isPresent() && low > FrostDamage.DANGER_MILLI_C
          ? Night.KILLS_VINES
          : Night.HURTS_FRUIT;
    }
    if (low <= 0) {
      return Night.KILLS_VINES;
    }
    int threshold = crop.keeping().chilling().map(c -> c.threshold().value()).orElse(0);
    return low < threshold ? Night.CHILLS : Night.HARMLESS;
  }

  /** Returns the days since fruit set: between the youngest and the oldest that can be. */
  private static Optional<Days> age(InField field, LocalDate today) {
    List<Integer> tagged = daysSince(field, FieldDay.FRUIT_SET, today);
    if (!tagged.isEmpty()) {
      return Optional.of(new Days(tagged.get(0), tagged.get(tagged.size() - 1)));
    }
    List<Integer> flower = daysSince(field, FieldDay.FIRST_FLOWER, today);
    return flower.isEmpty()
        ? Optional.empty()
        : Optional.of(new Days(0, flower.get(flower.size() - 1)));
  }

  private static List<Integer> daysSince(InField field, FieldDay what, LocalDate today) {
    return field.days().stream()
        .filter(noted -> noted.what() == what && !noted.day().isAfter(today))
        .map(noted -> Math.toIntExact(ChronoUnit.DAYS.between(noted.day(), today)))
        .sorted()
        .toList();
  }

  private static Worth worth(InField field, Optional<Days> age, LocalDate today) {
    Optional<Maturity> maturity = field.crop().maturity();
    if (maturity.isEmpty()) {
      return due(field, today).filter(days -> days <= 0).isPresent() ? Worth.RIPE : Worth.NOT_KNOWN;
    }
    if (age.isEmpty()) {
      Optional<Long> due = due(field, today);
      return due.isPresent() && due.get() <= 0 ? Worth.RIPE : Worth.NOT_KNOWN;
    }
    int ripe = maturity.get().ripe().value().low();
    int least =
        maturity.get().ripening().map(Ripening::notBefore).map(d -> d.value().low()).orElse(ripe);
    if (age.get().low() >= ripe) {
      return Worth.RIPE;
    }
    if (age.get().high() < least) {
      return Worth.TOO_YOUNG;
    }
    return age.get().low() >= least ? Worth.RIPENS_INSIDE : Worth.NOT_KNOWN;
  }

  /**
   * Returns how many days are still missing to what the seed packet says; below 0 if it is over.
   */
  private static Optional<Long> due(InField field, LocalDate today) {
    LocalDate from =
        field.plan().transplanted() == null ? field.plan().sown() : field.plan().transplanted();
    Integer expected = field.plan().expectedDays();
    return from == null || expected == null
        ? Optional.empty()
        : Optional.of(ChronoUnit.DAYS.between(today, from.plusDays(expected)));
  }

  private static String ripeness(InField field, Optional<Days> age, Worth worth) {
    String name = field.crop().name();
    if (age.isPresent() && field.crop().maturity().isPresent()) {
      Days ripe = field.crop().maturity().get().ripe().value();
      String days =
          (age.get().low() == 0 ? "At most " + age.get().high() : age.get().words())
              + " days after fruit set; "
              + name
              + " is ripe from "
              + ripe.words()
              + ".";
      return switch (worth) {
        case RIPE -> "Ripe: " + lower(days);
        case RIPENS_INSIDE -> "Old enough to ripen inside: " + lower(days);
        case NOT_KNOWN -> "Ripe or not, nobody can tell: " + lower(days);
        case TOO_YOUNG -> "Too young ever to be good: " + lower(days);
      };
    }
    return worth == Worth.RIPE
        ? "Due by the days on its packet."
        : "Nothing was noted of its fruit set, and its packet's days are not over or not known.";
  }

  private static String lower(String sentence) {
    return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
  }

  private static String cold(Crop crop, Night night, int low) {
    String degrees = String.format(Locale.ROOT, "%.1f C", low / 1000.0);
    return switch (night) {
      case HURTS_FRUIT ->
          degrees
              + " hurts the fruit itself (it freezes at "
              + crop.keeping().freezing().value() / 1000.0
              + " C).";
      case KILLS_VINES ->
          degrees
              + " kills the vines: nothing ripens after that, and bare fruit is in danger from "
              + FrostDamage.DANGER_MILLI_C / 1000.0
              + " C.";
      case CHILLS ->
          degrees
              + " is below "
              + crop.keeping().chilling().map(Chilling::threshold).orElseThrow().value() / 1000.0
              + " C: one such night is nothing, many add up.";
      case HARMLESS -> degrees + " does it no harm.";
    };
  }
}
