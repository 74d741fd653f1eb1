package rindward.controller.keeping;

import java.util.Optional;

/**
 * One day on which fruits were lost.
 *
 * @param day days of keeping
 * @param atRisk fruits still under watch as the day began
 * @param lost fruits lost that day
 * @param survival estimated share of all fruits still sound after that day, 0..1
 * @param standardError of that share, by Greenwood's formula; zero when none is left
 * @param interval of that share; empty when none is left
 */
public record SurvivalStep(
    int day,
    int atRisk,
    int lost,
    double survival,
    double standardError,
    Optional<Interval> interval) {}
