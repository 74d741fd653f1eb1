package rindward.controller.room;

import java.time.Duration;
import rindward.hardware.OutputKind;

/**
 * One switched output of a room.
 *
 * @param name its name, also the relay's
 * @param kind what it does to the air
 * @param contact what switches it
 * @param minimumOn how long it stays on once it is on; protects contacts and compressors
 * @param minimumOff how long it stays off once it is off
 * @param powerW electric power while on; 0 if nobody said
 * @param capacity what it moves: kg of water an hour, m3 of air a second (in thousandths), or W of
 *     heat removed; 0 if nobody said
 */
public record Output(
    String name,
    OutputKind kind,
    Contact contact,
    Duration minimumOn,
    Duration minimumOff,
    int powerW,
    int capacity) {}
