package rindward.hardware.shed;

import rindward.hardware.OutputKind;

/** One simulated relay: its name, and which output of which room it switches. */
public record RelayPlan(String name, String room, OutputKind kind) {}
