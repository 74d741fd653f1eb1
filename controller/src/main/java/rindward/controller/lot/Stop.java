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

  /** Returns what is told of a lot because of what was found in its sisters; a sentence each. */
  public static List<String> besideSisters(Lot lot, Crop crop) {
    return lot.harmsOfSisters().stream()
        .flatMap(found -> stops(found.harm(), crop).stream().flatMap(rule -> beside(found, rule)))
        .distinct()
        .toList();
  }

  private static Stream<String> beside(HarmFound found, HarmRule rule) {
    return rule.sisters().isEmpty()
        ? Stream.empty()
        : Stream.of(
            "Lot "
                + found.lot()
                + ", of the same seed or plot, was found "
                + found.harm()
                + ". "
                + rule.sisters(),
            rule.seed());
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
    return Stream.of(
            rules.stream().map(rule -> rule.say().value()),
            found.stream().map(HarmFound::sentence),
            rules.stream().map(HarmRule::seed),
            isUnread ? Stream.of(NewerEntry.SENTENCE) : Stream.<String>empty())
        .flatMap(sentences -> sentences)
        .filter(sentence -> !sentence.isEmpty())
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
