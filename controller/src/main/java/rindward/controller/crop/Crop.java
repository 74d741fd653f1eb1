package rindward.controller.crop;

import java.util.List;
import java.util.Optional;

/**
 * One type of crop in the guide.
 *
 * @param key what it is called in files and commands: lower case, hyphens
 * @param name what it is called in a sentence
 * @param group which types it may be compared with
 * @param aliases other keys people use for it
 * @param cure how it cures; empty where it must not be or need not be cured
 * @param noCure why there is no cure, told at the move; present exactly where {@code cure} is empty
 * @param keeping how it keeps
 * @param maturity when the fruit is ripe; empty where that is not told by fruit set
 * @param phases how it eats over time, in order
 * @param solubleSolids marks for soluble solids at eating, percent (degrees Brix)
 * @param dryMatter marks for dry matter of the flesh, percent
 * @param cautions what a grower should be told; one sentence each
 * @param harms what makes its fruits harmful, and what follows; the same for its whole group
 */
public record Crop(
    String key,
    String name,
    SpeciesGroup group,
    List<String> aliases,
    Optional<Cure> cure,
    Optional<Cited<String>> noCure,
    Keeping keeping,
    Optional<Maturity> maturity,
    List<Cited<EatingPhase>> phases,
    Optional<Mark> solubleSolids,
    Optional<Mark> dryMatter,
    List<Cited<String>> cautions,
    List<HarmRule> harms) {
  public Crop {
    harms = List.copyOf(harms);
    aliases = List.copyOf(aliases);
    phases = List.copyOf(phases);
    cautions = List.copyOf(cautions);
    if (cure.isPresent() == noCure.isPresent()) {
      throw new IllegalArgumentException(
          key + " must have either a cure or a sentence that says why it has none");
    }
  }

  /** Returns what follows when a harm is found in one of its fruits; empty if nothing does. */
  public Optional<HarmRule> harm(Harm found) {
    return harms.stream().filter(rule -> rule.harm() == found).findFirst();
  }
}
