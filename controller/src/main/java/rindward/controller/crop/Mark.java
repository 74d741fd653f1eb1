package rindward.controller.crop;

/**
 * Two marks on one scale of eating quality.
 *
 * @param passable from here it may be eaten with some pleasure, in thousandths of a percent
 * @param good from here it is good, in thousandths of a percent; not below {@code passable}
 */
public record Mark(Cited<Integer> passable, Cited<Integer> good) {
  public Mark {
    if (passable.value() > good.value()) {
      throw new IllegalArgumentException(
          "marks were "
              + passable.value()
              + " and "
              + good.value()
              + " but passable must not be above good");
    }
  }
}
