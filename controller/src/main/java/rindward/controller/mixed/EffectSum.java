package rindward.controller.mixed;

import java.util.ArrayList;
import java.util.List;

/**
 * A sum of effects of which something is to be said: a variety's effect, the difference of two.
 *
 * @param terms what is added; the same effect may stand in several
 */
public record EffectSum(List<Term> terms) {
  public EffectSum {
    terms = List.copyOf(terms);
  }

  /**
   * One effect, so many times.
   *
   * @param effect place of the effect in the model's list
   */
  public record Term(int effect, int level, double times) {}

  /** Takes terms one by one. */
  interface EachTerm {
    void accept(int effect, int level, double times);
  }

  /** Returns the effect of one level. */
  public static EffectSum of(int effect, int level) {
    return new EffectSum(List.of(new Term(effect, level, 1)));
  }

  /** Returns this and another one, so many times. */
  public EffectSum plus(EffectSum other, double times) {
    List<Term> all = new ArrayList<>(terms);
    other.terms.forEach(t -> all.add(new Term(t.effect, t.level, t.times * times)));
    return new EffectSum(all);
  }

  void forEach(EachTerm each) {
    terms.forEach(term -> each.accept(term.effect, term.level, term.times));
  }
}
