package rindward.controller.watch;

import rindward.controller.readiness.State;

/** Where one lot stands, in short. */
public record LotStanding(
    String code, String crop, String variety, String place, int sound, State state) {}
