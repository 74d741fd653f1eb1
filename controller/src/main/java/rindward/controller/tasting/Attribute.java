package rindward.controller.tasting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a panelist is asked about a sample. */
public enum Attribute {
  LIKING("liking", "overall liking", Scale.LIKING),
  SWEETNESS("sweetness", "sweetness", Scale.AMOUNT),
  MOISTNESS("moistness", "dry and mealy, to wet", "dry and mealy", "wet"),
  WATERY("watery", "watery taste", Scale.AMOUNT),
  STRINGINESS("stringiness", "smooth, to stringy", "smooth", "stringy"),
  GRAININESS("graininess", "grainy feel", Scale.AMOUNT),
  DENSITY("density", "light, to dense", "light", "dense"),
  FLAVOUR("flavour", "strength of flavour", Scale.AMOUNT),
  NUTTY("nutty", "nutty", Scale.AMOUNT),
  CARAMEL("caramel", "caramel", Scale.AMOUNT),
  EARTHY("earthy", "earthy", Scale.AMOUNT),
  FLORAL("floral", "floral", Scale.AMOUNT),
  RAW("raw", "raw or grassy", Scale.AMOUNT),
  AFTERTASTE("aftertaste", "unpleasant aftertaste", Scale.AMOUNT),
  /** Yes stops the sample: nobody tastes it again. */
  BITTER("bitter", "bitter", Scale.YES_NO),
  EAT_AGAIN("eat-again", "would eat again", Scale.YES_NO);

  private final String key;
  private final String question;
  private final Scale scale;
  private final List<String> words;

  Attribute(String key, String question, Scale scale) {
    this.key = key;
    this.question = question;
    this.scale = scale;
    this.words = scale.words();
  }

  /** An attribute between two named ends. */
  Attribute(String key, String question, String first, String second) {
    this.key = key;
    this.question = question;
    this.scale = Scale.BETWEEN;
    List<String> named = new ArrayList<>();
    for (String word : scale.words()) {
      named.add(word.replace("the first", first).replace("the second", second));
    }
    this.words = List.copyOf(named);
  }

  /** Returns the attribute of that key, as files and commands write it. */
  public static Optional<Attribute> of(String key) {
    return Arrays.stream(values()).filter(a -> a.key.equals(key)).findFirst();
  }

  /** Returns what files and commands call it: lower case, hyphens. */
  public String key() {
    return key;
  }

  /** Returns what a tasting sheet calls it. */
  public String question() {
    return question;
  }

  /** Returns the scale it is scored on. */
  public Scale scale() {
    return scale;
  }

  /** Returns the words of each score, from the lowest of the scale to the highest. */
  public List<String> words() {
    return words;
  }

  /** Returns why a score cannot be taken, as one sentence, or nothing. */
  public Optional<String> refusal(int score) {
    if (scale.contains(score)) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "%s was '%d' but it must be %d (%s) to %d (%s)",
            key,
            score,
            scale.lowest(),
            words.get(0),
            scale.highest(),
            words.get(words.size() - 1)));
  }

  /** Tells whether such a score ends the tasting of its sample for everyone. */
  public boolean stopsSample(int score) {
    return this == BITTER && score == Scale.YES_NO.highest();
  }
}
