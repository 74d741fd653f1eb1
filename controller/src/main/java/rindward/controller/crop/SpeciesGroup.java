package rindward.controller.crop;

/** Which crops belong together botanically; varieties are compared inside a group only. */
public enum SpeciesGroup {
  /** Cucurbita pepo: acorn, delicata, spaghetti, most pumpkins. */
  PEPO,
  /** Cucurbita maxima: kabocha, buttercup, hubbard, the large heirlooms. */
  MAXIMA,
  /** Cucurbita moschata: butternut, cheese, neck and tropical pumpkins. */
  MOSCHATA,
  /** Ipomoea batatas. */
  SWEET_POTATO,
  /** Onion, shallot and garlic. */
  ALLIUM,
  /** Solanum tuberosum. */
  POTATO
}
