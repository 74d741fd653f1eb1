package rindward.controller.lot;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Harm;
import rindward.controller.crop.HarmRule;
import rindward.controller.crop.HarmRule.Reach;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.Served;

/**
 * Why a lot must not be eaten: what was found in one of its fruits goes for all of them. The one
 * place that tells; whoever offers, plans or serves fruits asks here.
 *
 * @param found what stops it, in the order in which it was said
 * @param rules what is told of that
 * @param isUnread whether a newer version said something of it that may have been such a finding
 */
public record Stop(List<HarmFound> found, List<HarmRule> rules, boolean isUnread) {

  /** Returns what stops a lot; empty if it may be eaten, or if its type has left the guide. */
  public static Optional<Stop> of(Lot lot, CropGuide crops) {
    return crops.crop(lot.crop()).flatMap(crop -> of(lot, crop));
  }

  /** Returns what stops a lot; empty if it may be eaten. */
  public static Optional<Stop> of(Lot lot, Crop crop) {
    List<HarmFound> found =
        lot.harms().stream().filter(each -> stops(each.harm(), crop).isPresent()).toList();
    boolean isUnread = !lot.unread().isEmpty();
    return found.isEmpty() && !isUnread
        ? Optional.empty()
        : Optional.of(
            new Stop(
                found,
                found.stream()
                    .map(HarmFound::harm)
                    .distinct()
                    .flatMap(harm -> stops(harm, crop).stream())
                    .toList(),
                isUnread));
  }

  /** Returns the names of a session's samples whose lots must not be eaten: nobody tastes them. */
  public static Set<String> samples(Session session, Lots lots, CropGuide crops) {
    return session.planned().samples().stream()
        .filter(served -> lots.find(served.lot()).flatMap(lot -> Stop.of(lot, crops)).isPresent())
        .map(Served::name)
        .collect(Collectors.toSet());
  }

  /** Returns what is told of findings that go for their own fruits alone; one sentence or a few. */
  public static List<String> ofFruits(Lot lot, Crop crop) {
    return lot.harms().stream()
        .flatMap(
            found ->
                crop.harm(found.harm()).filter(rule -> rule.reach() == Reach.FRUIT).stream()
                    .flatMap(rule -> Stream.of(found.sentence(), rule.say().value())))
        .distinct()
        .toList();
  }

  private static Optional<HarmRule> stops(Harm harm, Crop crop) {
    return crop.harm(harm).filter(rule -> rule.reach() == Reach.LOT);
  }

  /** Returns everything that is told, the weightiest first; one sentence or a few each. */
  public List<String> sentences() {
    Stream<String> harms =
        Stream.concat(
            rules.stream().map(rule -> rule.say().value()),
            found.stream().map(HarmFound::sentence));
    return Stream.concat(harms, isUnread ? Stream.of(NewerEntry.SENTENCE) : Stream.empty())
        .distinct()
        .toList();
  }

  /** Returns it in a few words, for a line of a list. */
  public String words() {
    return "DO NOT EAT: "
        + Stream.concat(
                rules.stream().map(rule -> rule.harm().toString()),
                isUnread ? Stream.of("a newer version said something of it") : Stream.empty())
            .collect(Collectors.joining(", "));
  }
}
