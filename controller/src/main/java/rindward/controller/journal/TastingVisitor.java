package rindward.controller.journal;

/** Does something different for everything that is said of a session. */
public interface TastingVisitor<R> {
  R planned(SessionPlanned entry);

  R cooked(SampleCooked entry);

  R scored(Scored entry);

  R usesTicked(UsesTicked entry);

  R takenBack(TakenBack entry);

  R closed(SessionClosed entry);
}
