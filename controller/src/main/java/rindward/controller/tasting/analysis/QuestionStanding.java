package rindward.controller.tasting.analysis;

/**
 * What place a question has in its session: fourteen questions are fourteen chances to find a
 * difference that is not there, so only one may always speak.
 */
public enum QuestionStanding {
  /** The question that was declared first; it is tested whatever else was asked. */
  MAIN,
  /** Tested together with the others, because the main question found something. */
  TESTED,
  /** Described and not tested, because the main question found nothing. */
  DESCRIBED
}
