package rindward.controller.variety;

/**
 * Which variety is meant: two types may have varieties of one name.
 *
 * @param crop key of the type in the crop guide
 * @param variety the grower's name for it
 */
public record VarietyName(String crop, String variety) {
  @Override
  public String toString() {
    return variety;
  }
}
