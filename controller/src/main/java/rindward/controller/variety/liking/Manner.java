package rindward.controller.variety.liking;

/** How a score came about, which says how far it goes. */
public enum Manner {
  /** From a coded cup: nobody knew what it was. */
  BLIND,
  /** At a tasting where the names stood beside the cups. */
  OPEN,
  /** In the kitchen, by one who knew what was cooked. */
  KITCHEN
}
