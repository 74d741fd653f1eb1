package rindward.controller.journal;

/** What came to light while one entry was read: whether all of it was understood. */
final class Understanding {
  private boolean isWhole = true;

  /** Something was written that this version has no field for. */
  void leftSomething() {
    isWhole = false;
  }

  /** Tells whether everything that was written was understood. */
  boolean isWhole() {
    return isWhole;
  }
}
