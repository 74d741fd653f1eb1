package rindward.dashboard.placards;

import java.util.List;

/**
 * What was read off a picture.
 *
 * @param says the text of each square; none where no square was found
 */
public record SquaresView(List<String> says) {
  public SquaresView {
    says = List.copyOf(says);
  }
}
