package rindward.controller.lot;

import rindward.controller.lot.Tasting.SampleCooked;
import rindward.controller.lot.Tasting.Scored;
import rindward.controller.lot.Tasting.SessionClosed;
import rindward.controller.lot.Tasting.SessionPlanned;
import rindward.controller.lot.Tasting.TakenBack;
import rindward.controller.lot.Tasting.UsesTicked;

/** Does something different for everything that is said of a session. */
public interface TastingVisitor<R> {
  R planned(SessionPlanned entry);

  R cooked(SampleCooked entry);

  R scored(Scored entry);

  R usesTicked(UsesTicked entry);

  R takenBack(TakenBack entry);

  R closed(SessionClosed entry);
}
