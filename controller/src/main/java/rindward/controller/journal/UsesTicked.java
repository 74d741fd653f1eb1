package rindward.controller.journal;

import java.time.Instant;
import java.util.List;
import rindward.controller.tasting.Use;

/** A panelist said what the fruit in one cup is good for; said again, the later answer counts. */
public record UsesTicked(String session, String panelist, String code, List<Use> uses, Instant at)
    implements Tasting {
  public UsesTicked {
    uses = List.copyOf(uses);
  }

  @Override
  public <R> R accept(TastingVisitor<R> visitor) {
    return visitor.usesTicked(this);
  }
}
